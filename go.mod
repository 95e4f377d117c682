module aligner

go 1.26
