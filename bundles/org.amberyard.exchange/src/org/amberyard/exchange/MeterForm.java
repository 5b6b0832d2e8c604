package org.amberyard.exchange;

/** Where a meter's file says what its numbers are, and what to do when it is wrong. */
enum MeterForm {
    /** A table of readings. */
    CSV("the header", "Let the header end in _%s if so, or correct the bills."),
    /** A feed of the Energy Services Provider Interface. */
    GREEN_BUTTON("the reading type",
            "Correct its uom or powerOfTenMultiplier if so (Wh are 72, W are 38), or correct the bills.");

    private final String place;
    private final String remedy;

    MeterForm(String place, String remedy) {
        this.place = place;
        this.remedy = remedy;
    }

    /** What to say when the numbers look like another unit than that of the file. */
    String wrongUnit(MeterUnit said, MeterUnit looksLike) {
        return place + " says " + said.label() + " but the numbers look like " + looksLike.label() + ". "
                + String.format(remedy, said.otherEnding());
    }
}
