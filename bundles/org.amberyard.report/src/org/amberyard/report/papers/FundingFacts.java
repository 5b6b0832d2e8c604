package org.amberyard.report.papers;

import java.util.LinkedHashMap;
import java.util.Map;
import org.amberyard.model.funding.AwardStatus;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;

/**
 * How far sources of money are secured, which no calculation needs.
 *
 * @param programmes what is known of programmes, by name
 * @param own what is known of the own money of plans, by name
 */
record FundingFacts(Map<String, Secured> programmes, Map<String, Secured> own) {
    /** What stands where the applicant has to write something. */
    private static final String TO_FILL = "†";

    /**
     * How far money is secured.
     *
     * @param status status as the study holds it; empty where nobody has said it
     * @param committed true where it is promised in writing
     * @param letter the document that says so; may be empty
     * @param restrictions what is asked for beside the fields of a programme; may be empty
     */
    record Secured(String status, boolean committed, String letter, String restrictions) {
        private static final Secured NOT_SAID = new Secured("", false, "", "");

        String statusOrBlank() {
            return status.isEmpty() ? TO_FILL : status;
        }

        String letterOrBlank() {
            return letter.isEmpty() ? TO_FILL : letter;
        }

        boolean isToFill() {
            return status.isEmpty() || letter.isEmpty();
        }

        /** Status and letter, in words. */
        String words() {
            return (status.isEmpty() ? "not said how far it is secured" : status) + (letter.isEmpty() ? "" : ": " + letter);
        }
    }

    static FundingFacts of(Study study) {
        Map<String, Secured> programmes = new LinkedHashMap<>();
        for (Programme programme : study.getProgrammes()) {
            programmes.put(programme.getName(), secured(programme.getStatus(), programme.getLetter(), programme.getRestrictions()));
        }
        Map<String, Secured> own = new LinkedHashMap<>();
        for (Plan plan : study.getPlans()) {
            own.put(plan.getName(), secured(plan.getOwnStatus(), plan.getOwnLetter(), ""));
        }
        return new FundingFacts(Map.copyOf(programmes), Map.copyOf(own));
    }

    private static Secured secured(AwardStatus status, String letter, String restrictions) {
        return new Secured(status == AwardStatus.NOT_SAID ? "" : status.getLiteral(), status == AwardStatus.COMMITTED, SourceWords.of(text(letter)),
                text(restrictions));
    }

    private static String text(String value) {
        return value == null ? "" : value.strip();
    }

    Secured ofProgramme(String name) {
        return programmes.getOrDefault(name, Secured.NOT_SAID);
    }

    Secured ofOwn(String plan) {
        return own.getOrDefault(plan, Secured.NOT_SAID);
    }
}
