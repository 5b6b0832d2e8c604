package org.amberyard.report.papers;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.model.study.Study;

/**
 * Who applies, as documents print it; any text may be empty.
 *
 * @param name legal name
 * @param address postal address
 * @param contact person to ask
 * @param title title or office of that person
 * @param phone telephone number
 * @param email e-mail address
 */
record ApplicantFacts(String name, String address, String contact, String title, String phone, String email) {
    /** What stands where the applicant has to write something. */
    static final String BLANK = "† ______________________________";

    static ApplicantFacts of(Study study) {
        return new ApplicantFacts(text(study.getApplicant()), text(study.getApplicantAddress()), text(study.getContactPerson()),
                text(study.getContactTitle()), text(study.getContactPhone()), text(study.getContactEmail()));
    }

    private static String text(String value) {
        return value == null ? "" : value.strip();
    }

    /** Person and title in one line; empty where neither is known. */
    String person() {
        return Stream.of(contact, title).filter(t -> !t.isEmpty()).collect(Collectors.joining(", "));
    }

    /** A text, or a blank to fill in. */
    static String orBlank(String text) {
        return text.isEmpty() ? BLANK : text;
    }
}
