package org.amberyard.report.papers;

/**
 * A milestone of a timeline; without a date it is for the applicant to date.
 *
 * @param date day, ISO 8601; empty where the study holds none
 * @param what what happens
 * @param whose what it happens to; milestones that differ in this alone are one line
 * @param basis where the date comes from
 */
record Milestone(String date, String what, String whose, String basis) {
    String words() {
        return whose.isEmpty() ? what : what + ": " + whose;
    }

    /** A number of days or years. */
    static String count(int number, String unit) {
        return number + " " + unit + (number == 1 ? "" : "s");
    }

    Milestone with(Milestone other) {
        return new Milestone(date, what, whose + "; " + other.whose, basis);
    }
}
