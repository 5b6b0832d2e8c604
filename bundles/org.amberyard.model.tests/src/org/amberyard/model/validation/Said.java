package org.amberyard.model.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.model.SmallStudy;

/** Compares everything that validation says of a study, word for word. */
final class Said {
    private Said() {
    }

    /** @param expected severity and message of each finding, for example {@code ERROR: Bus B01: …} */
    static void of(SmallStudy small, String... expected) {
        List<Finding> findings = new StudyValidation(ValueText.PLAIN).check(small.study);
        assertEquals(String.join("\n", expected),
                String.join("\n", findings.stream().map(f -> f.severity() + ": " + f.message()).toList()));
    }
}
