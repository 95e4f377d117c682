package words

// This file lists the sentences of a boat's history: what moved since the last
// visit, the likely cause, and the plots of it.

const (
	HistoryEngineHours ID = "history_engine_hours"
)
