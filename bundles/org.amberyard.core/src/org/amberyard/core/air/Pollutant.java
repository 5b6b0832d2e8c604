package org.amberyard.core.air;

/** What goes into the air; masses are in kilograms. */
public enum Pollutant {
    /** Greenhouse gases together, as the carbon dioxide that warms as much over 100 years. */
    CO2E("CO2e"),
    /** Carbon dioxide. */
    CO2("CO2"),
    /** Methane. */
    CH4("CH4"),
    /** Nitrous oxide. */
    N2O("N2O"),
    /** Nitrogen oxides, as nitrogen dioxide. */
    NOX("NOx"),
    /** Particles smaller than 2.5 micrometres. */
    PM25("PM2.5"),
    /** Hydrocarbons: volatile organic compounds. */
    HC("HC"),
    /** Carbon monoxide. */
    CO("CO"),
    /** Sulphur dioxide. */
    SO2("SO2");

    private final String label;

    Pollutant(String label) {
        this.label = label;
    }

    /** Name for tables and charts. */
    public String label() {
        return label;
    }

    /** True for a gas that warms, and for their sum. */
    public boolean warms() {
        return ordinal() <= N2O.ordinal();
    }
}
