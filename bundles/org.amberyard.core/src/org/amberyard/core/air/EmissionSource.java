package org.amberyard.core.air;

/** Where emissions come from. Each source counts on its own; what is upstream of the tank never enters a total. */
public enum EmissionSource {
    /** Engines on the road. */
    DRIVING("Driving"),
    /** Engines that idle in the yard. */
    IDLING("Yard idling"),
    /** Fuel-fired heaters, on engine and electric buses. */
    HEATER("Heaters"),
    /** Dust of brake linings. */
    BRAKES("Brakes"),
    /** Dust of tyres. */
    TYRES("Tyres"),
    /** Power plants, for the energy at the meter and the losses on its way. */
    GRID("Power plants"),
    /** Making and delivering the fuel: well to tank. */
    UPSTREAM("Fuel upstream");

    private final String label;

    EmissionSource(String label) {
        this.label = label;
    }

    /** Name for tables and charts. */
    public String label() {
        return label;
    }

    /** True for what leaves an exhaust pipe of a bus: that of its engine or of its heater. */
    public boolean exhaust() {
        return this == DRIVING || this == IDLING || this == HEATER;
    }

    /** True for what counts in a total. */
    public boolean inTotal() {
        return this != UPSTREAM;
    }
}
