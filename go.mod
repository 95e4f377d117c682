module aligner

go 1.26.0

require (
	github.com/alecthomas/kong v1.17.0 // indirect
	github.com/go-gl/mathgl v1.2.0 // indirect
	github.com/nicksnyder/go-i18n/v2 v2.7.0 // indirect
	github.com/rogpeppe/go-internal v1.16.0 // indirect
	github.com/santhosh-tekuri/jsonschema/v6 v6.0.3 // indirect
	golang.org/x/image v0.47.0 // indirect
	golang.org/x/text v0.43.0 // indirect
	gonum.org/v1/gonum v0.17.0 // indirect
)
