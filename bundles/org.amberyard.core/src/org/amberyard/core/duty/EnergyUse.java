package org.amberyard.core.duty;

/**
 * What driving takes. Amounts add up over runs, days and years.
 *
 * @param km distance, km
 * @param hours time in service, h
 * @param drawnKwh energy drawn from the battery (or, with an engine, work of the crankshaft), kWh
 * @param recoveredKwh braking energy returned to the battery, kWh
 * @param causes where the difference of the two goes
 * @param gridKwh energy from the yard while plugged in, for heat before departure and for the pack, kWh
 * @param fuelL fuel of the engine, L
 * @param heaterFuelL fuel of a fuel-fired heater, L
 * @param heatShortKwh heat missing to hold the cabin warm beyond what the heater can bring, kWh
 */
public record EnergyUse(double km, double hours, double drawnKwh, double recoveredKwh, EnergyCauses causes, double gridKwh,
        double fuelL, double heaterFuelL, double heatShortKwh) {

    /** Nothing driven. */
    public static final EnergyUse ZERO = new EnergyUse(0, 0, 0, 0, EnergyCauses.ZERO, 0, 0, 0, 0);

    /** A volume of fuel burnt standing still. */
    public static EnergyUse ofFuel(double fuelL) {
        return new EnergyUse(0, 0, 0, 0, EnergyCauses.ZERO, 0, fuelL, 0, 0);
    }

    /** Net energy taken from the battery of an electric bus, which charging must bring back, kWh. */
    public double batteryKwh() {
        return drawnKwh - recoveredKwh;
    }

    /** Energy drawn from the battery of an electric bus, recovered energy drawn again included, kWh. */
    public double dischargedKwh() {
        return drawnKwh;
    }

    /** This use and another. */
    public EnergyUse plus(EnergyUse o) {
        return new EnergyUse(km + o.km, hours + o.hours, drawnKwh + o.drawnKwh, recoveredKwh + o.recoveredKwh,
                causes.plus(o.causes), gridKwh + o.gridKwh, fuelL + o.fuelL, heaterFuelL + o.heaterFuelL,
                heatShortKwh + o.heatShortKwh);
    }

    /** This use a number of times. */
    public EnergyUse times(double n) {
        return new EnergyUse(n * km, n * hours, n * drawnKwh, n * recoveredKwh, causes.times(n), n * gridKwh, n * fuelL,
                n * heaterFuelL, n * heatShortKwh);
    }

    /** The same driving with all energy and fuel multiplied, as a calibration by measurements asks. */
    public EnergyUse calibrated(double factor) {
        return new EnergyUse(km, hours, factor * drawnKwh, factor * recoveredKwh, causes.times(factor),
                factor * gridKwh, factor * fuelL, factor * heaterFuelL, heatShortKwh);
    }
}
