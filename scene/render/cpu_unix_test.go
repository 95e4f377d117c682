//go:build unix

// This file tells how much processor time the test has used: unlike the clock it
// hardly minds what else the machine does.

package render

import (
	"syscall"
	"time"
)

func used() time.Duration {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		panic(err)
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}
