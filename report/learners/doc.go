// Package learners keeps what came of practice, by the learner's name.
//
//	practice.Debrief --Add--> practice.jsonl, a line each --All--> list, rows
//
// The file stands beside the logbook and is only ever added to. A line holds the
// task, every act and what came of it, so that it can be replayed and judged anew. A
// line that cannot be read (cut off as the machine went down, written by a later
// program) is told by its number and stepped over; it is never taken out.
package learners
