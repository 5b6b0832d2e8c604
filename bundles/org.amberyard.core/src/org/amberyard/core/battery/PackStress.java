package org.amberyard.core.battery;

import java.util.List;

/**
 * What wears a pack in one year. Charge is that of the cells, so the margins that the battery management keeps are part of it.
 *
 * @param dwells where the pack was how warm and how full
 * @param cycles swings of its charge
 * @param fullCycles energy discharged in the year over nominal energy, as {@link FullCycleCount} has it
 */
public record PackStress(List<Dwell> dwells, List<Cycle> cycles, double fullCycles) {

    /**
     * Time at one state.
     *
     * @param packC pack temperature, °C
     * @param chargeShare state of charge of the cells
     * @param hoursPerYear time, h
     */
    public record Dwell(double packC, double chargeShare, double hoursPerYear) {
    }

    /**
     * Swings alike.
     *
     * @param depth change of the state of charge
     * @param meanShare state of charge in the middle
     * @param countPerYear cycles in a year; two half cycles are one
     * @param powerPerHour power over nominal energy while driving, 1/h
     */
    public record Cycle(double depth, double meanShare, double countPerYear, double powerPerHour) {

        /** Full cycles in a year that the swings amount to. */
        public double fullCycles() {
            return depth * countPerYear;
        }
    }

    public PackStress {
        dwells = List.copyOf(dwells);
        cycles = List.copyOf(cycles);
    }
}
