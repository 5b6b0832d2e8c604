package org.amberyard.core.upkeep;

/** Buses that a task applies to, by what drives them. */
public enum Powertrain {
    ALL, ENGINE, DIESEL, GASOLINE, PROPANE, ELECTRIC;

    /**
     * True when a task for this powertrain applies to a bus.
     *
     * @param bus the bus's own: diesel, gasoline, propane or electric
     */
    public boolean covers(Powertrain bus) {
        return this == ALL || this == bus || this == ENGINE && bus != ELECTRIC;
    }
}
