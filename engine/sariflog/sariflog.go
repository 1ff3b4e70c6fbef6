// Package sariflog is the parts of a SARIF 2.1.0 log that are used
// here. Code-scanning sites read this format; section numbers are those
// of the OASIS standard.
package sariflog

type (
	Log struct {
		Schema  string `json:"$schema"`
		Version string `json:"version"`
		Runs    []Run  `json:"runs"`
	}
	Run struct {
		Properties  RunProperties `json:"properties"` // first, for it holds the cautions
		Tool        Tool          `json:"tool"`
		Invocations []Invocation  `json:"invocations"`
		ColumnKind  string        `json:"columnKind"`
		Results     []Result      `json:"results"`
	}
	RunProperties struct {
		Cautions any `json:"cautions"`
		Totals   any `json:"totals"`
	}
	Tool struct {
		Driver Driver `json:"driver"`
	}
	Driver struct {
		Name            string `json:"name"`
		Version         string `json:"version"`
		SemanticVersion string `json:"semanticVersion"`
		Rules           []Rule `json:"rules"`
	}
	Rule struct {
		ID                   string         `json:"id"`
		ShortDescription     Text           `json:"shortDescription"`
		FullDescription      Text           `json:"fullDescription"`
		Help                 Text           `json:"help"`
		DefaultConfiguration Configuration  `json:"defaultConfiguration"`
		Properties           RuleProperties `json:"properties"`
	}
	Text struct {
		Text     string `json:"text"`
		Markdown string `json:"markdown,omitempty"`
	}
	Configuration struct {
		Level string `json:"level"`
	}
	RuleProperties struct {
		Tags []string `json:"tags"`
		Pack string   `json:"pack,omitempty"`
		On   string   `json:"on,omitempty"`
		At   string   `json:"at,omitempty"`
	}
	Invocation struct {
		ExecutionSuccessful        bool           `json:"executionSuccessful"`
		ToolExecutionNotifications []Notification `json:"toolExecutionNotifications"`
	}
	Notification struct {
		Locations []Location `json:"locations,omitempty"`
		Message   Text       `json:"message"`
		Level     string     `json:"level"`
	}
	Result struct {
		RuleID              string            `json:"ruleId"`
		RuleIndex           int               `json:"ruleIndex"`
		Kind                string            `json:"kind"`
		Level               string            `json:"level"`
		Message             Text              `json:"message"`
		Locations           []Location        `json:"locations"`
		RelatedLocations    []Location        `json:"relatedLocations,omitempty"`
		PartialFingerprints map[string]string `json:"partialFingerprints"`
		Suppressions        []Suppression     `json:"suppressions"` // never null (section 3.27.23)
		Properties          ResultProperties  `json:"properties"`
	}
	Location struct {
		PhysicalLocation *Physical `json:"physicalLocation,omitempty"`
		LogicalLocations []Logical `json:"logicalLocations,omitempty"`
		Message          *Text     `json:"message,omitempty"`
	}
	Logical struct {
		FullyQualifiedName string `json:"fullyQualifiedName"`
	}
	Physical struct {
		ArtifactLocation Artifact `json:"artifactLocation"`
		Region           Region   `json:"region"`
	}
	Artifact struct {
		URI string `json:"uri"`
	}
	Region struct {
		StartLine   int `json:"startLine"`
		StartColumn int `json:"startColumn"`
		EndLine     int `json:"endLine"`
		EndColumn   int `json:"endColumn"` // of the character after the last, section 3.30.8
	}
	Suppression struct {
		Kind          string    `json:"kind"`
		Status        string    `json:"status"`
		Justification string    `json:"justification"`
		Location      *Location `json:"location,omitempty"`
	}
	ResultProperties struct {
		// Answer is flagged, unsure or waived; of no rule:
		// caution, foodSafety.
		Answer     string   `json:"answer"`
		Formula    string   `json:"formula,omitempty"`
		Subject    string   `json:"subject,omitempty"`
		FoodSafety bool     `json:"foodSafety,omitempty"`
		Doubt      bool     `json:"doubt,omitempty"`
		Figures    string   `json:"figures,omitempty"`
		Needs      []string `json:"needs,omitempty"`
		Mends      []Mend   `json:"mends,omitempty"`
		Source     string   `json:"source,omitempty"`
	}
	// Mend is a mend in words: as a fix of SARIF a site would offer it
	// as an edit.
	Mend struct {
		Text  string `json:"text"`
		Trust string `json:"trust"`
	}
)
