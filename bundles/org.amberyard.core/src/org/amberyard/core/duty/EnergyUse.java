package org.amberyard.core.duty;

/**
 * What driving takes, split by purpose. Amounts add up over runs, days and years.
 *
 * @param km distance, km
 * @param hours time in service, h
 * @param tractionKwh battery energy (or, with an engine, crankshaft work) for driving, kWh
 * @param recoveredKwh braking energy returned to the battery, kWh
 * @param frictionBrakeKwh braking work at the friction brakes, kWh
 * @param auxiliaryKwh auxiliaries, kWh
 * @param heatKwh electric energy for cabin heat, kWh
 * @param coolingKwh energy for cooling, kWh
 * @param fuelL fuel of the engine, L
 * @param heaterFuelL fuel of a fuel-fired heater, L
 * @param heatShortKwh heat that was asked for beyond what the heater can bring, kWh
 */
public record EnergyUse(double km, double hours, double tractionKwh, double recoveredKwh, double frictionBrakeKwh,
        double auxiliaryKwh, double heatKwh, double coolingKwh, double fuelL, double heaterFuelL,
        double heatShortKwh) {

    /** Nothing driven. */
    public static final EnergyUse ZERO = new EnergyUse(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    /** A volume of fuel burnt standing still. */
    public static EnergyUse ofFuel(double fuelL) {
        return new EnergyUse(0, 0, 0, 0, 0, 0, 0, 0, fuelL, 0, 0);
    }

    /** Net energy taken from the battery of an electric bus, which charging must bring back, kWh. */
    public double batteryKwh() {
        return tractionKwh - recoveredKwh + auxiliaryKwh + heatKwh + coolingKwh;
    }

    /** Energy drawn from the battery of an electric bus, recovered energy drawn again included, kWh. */
    public double dischargedKwh() {
        return batteryKwh() + recoveredKwh;
    }

    /** This use and another. */
    public EnergyUse plus(EnergyUse o) {
        return new EnergyUse(km + o.km, hours + o.hours, tractionKwh + o.tractionKwh, recoveredKwh + o.recoveredKwh,
                frictionBrakeKwh + o.frictionBrakeKwh, auxiliaryKwh + o.auxiliaryKwh, heatKwh + o.heatKwh,
                coolingKwh + o.coolingKwh, fuelL + o.fuelL, heaterFuelL + o.heaterFuelL,
                heatShortKwh + o.heatShortKwh);
    }

    /** This use a number of times. */
    public EnergyUse times(double n) {
        return new EnergyUse(n * km, n * hours, n * tractionKwh, n * recoveredKwh, n * frictionBrakeKwh,
                n * auxiliaryKwh, n * heatKwh, n * coolingKwh, n * fuelL, n * heaterFuelL, n * heatShortKwh);
    }
}
