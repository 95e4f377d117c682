package hulls

// Material is a shaft alloy in one condition.
type Material struct {
	UNS       string // "UNS S20910"
	Family    string
	Condition string

	YoungGPa, ShearGPa float64
	DensityGPerCM3     float64
	YieldMinMPa        float64
	TensileMinMPa      float64
	// EnduranceMPa is the range of a cautious seawater fatigue figure at 1e8
	// turns: low confidence, order of magnitude only.
	EnduranceMPa [2]float64
}
