package org.amberyard.core.upkeep;

/** What upkeep is spent on: the system of the bus, as work orders name it. */
public enum UpkeepCause {
    INSPECTION("inspection"), ENGINE("engine"), EXHAUST("exhaust"), TRANSMISSION("transmission"),
    HIGH_VOLTAGE("high voltage"), COOLING("cooling"), BRAKES("brakes"), TYRES("tyres"), HEATING("heating and air"),
    ELECTRICAL("12 V electrics"), BODY("body and doors"), OVERHAUL("overhaul"),
    /** Upkeep of a type without tasks, whose cost per distance does not say where it goes. */
    UNSPLIT("not split");

    private final String word;

    UpkeepCause(String word) {
        this.word = word;
    }

    /** Name for tables and charts. */
    public String word() {
        return word;
    }
}
