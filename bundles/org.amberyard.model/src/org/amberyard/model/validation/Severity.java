package org.amberyard.model.validation;

/** How much a finding matters. */
public enum Severity {
    /** The study cannot be evaluated until it is put right. */
    ERROR,
    /** The study can be evaluated but the result is doubtful. */
    WARNING,
    /** Worth knowing. */
    INFO
}
