// Package page is what every page of the program shares with the window it
// fills: a Desk to sit at, and the few things the window asks of a Page.
//
//	window --Desk--> page's own New(desk, ...) --> Page
//	window <--Back-- Escape, or the page's own button
//
// A page is made when it is asked for, in the language, units and looks of that
// moment, and made anew when these change; it keeps nothing that would be lost
// by that.
package page
