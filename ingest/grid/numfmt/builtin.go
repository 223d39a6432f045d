package numfmt

// Builtin returns the code of a format that workbooks name by a number alone
// (ECMA-376 part 1, section 18.8.30), and "" for General and for numbers that
// name none. The dates of 14 and 22 follow the language of the machine; they
// are shown as a machine set to United States English does.
func Builtin(id int) string {
	if id >= 0 && id < len(builtin) {
		return builtin[id]
	}
	return ""
}

var builtin = [...]string{
	1:  "0",
	2:  "0.00",
	3:  "#,##0",
	4:  "#,##0.00",
	5:  `"$"#,##0_);\("$"#,##0\)`,
	6:  `"$"#,##0_);[Red]\("$"#,##0\)`,
	7:  `"$"#,##0.00_);\("$"#,##0.00\)`,
	8:  `"$"#,##0.00_);[Red]\("$"#,##0.00\)`,
	9:  "0%",
	10: "0.00%",
	11: "0.00E+00",
	12: "# ?/?",
	13: "# ??/??",
	14: "m/d/yyyy",
	15: "d-mmm-yy",
	16: "d-mmm",
	17: "mmm-yy",
	18: "h:mm AM/PM",
	19: "h:mm:ss AM/PM",
	20: "h:mm",
	21: "h:mm:ss",
	22: "m/d/yyyy h:mm",
	// 27-36 and 50-58 are dates in East Asian editions only.
	37: `#,##0_);\(#,##0\)`,
	38: `#,##0_);[Red]\(#,##0\)`,
	39: `#,##0.00_);\(#,##0.00\)`,
	40: `#,##0.00_);[Red]\(#,##0.00\)`,
	41: `_(* #,##0_);_(* \(#,##0\);_(* "-"_);_(@_)`,
	42: `_("$"* #,##0_);_("$"* \(#,##0\);_("$"* "-"_);_(@_)`,
	43: `_(* #,##0.00_);_(* \(#,##0.00\);_(* "-"??_);_(@_)`,
	44: `_("$"* #,##0.00_);_("$"* \(#,##0.00\);_("$"* "-"??_);_(@_)`,
	45: "mm:ss",
	46: "[h]:mm:ss",
	47: "mm:ss.0",
	48: "##0.0E+0",
	49: "@",
}
