package org.amberyard.core.duty;

/**
 * Heater of an electric bus: what it draws to bring a heat.
 *
 * @param source where the heat comes from
 * @param outputLimitKw largest heat output, kW
 * @param copAtFreezing heat over electric input of a heat pump at 0 °C
 * @param copRisePerK rise of that coefficient per degree of outside air
 * @param fuelEfficiency heat over fuel energy of a fuel-fired heater
 */
public record Heater(Source source, double outputLimitKw, double copAtFreezing, double copRisePerK,
        double fuelEfficiency) {

    /** Sources of cabin heat. */
    public enum Source {
        RESISTANCE, HEAT_PUMP, FUEL_FIRED
    }

    /** A fuel-fired heater of the same output. */
    public Heater fuelFired() {
        return new Heater(Source.FUEL_FIRED, outputLimitKw, copAtFreezing, copRisePerK, fuelEfficiency);
    }

    /** Heat output that an electric power allows, kW. */
    public double outputKw(double electricKw, double outsideC) {
        double perElectric = electricKwh(1, outsideC);
        return perElectric > 0 ? Math.min(outputLimitKw, Math.max(0, electricKw) / perElectric) : outputLimitKw;
    }

    /** Electric energy drawn for a heat, kWh. */
    public double electricKwh(double heatKwh, double outsideC) {
        return switch (source) {
            case RESISTANCE -> heatKwh;
            case HEAT_PUMP -> heatKwh / Math.max(1, copAtFreezing + copRisePerK * outsideC);
            case FUEL_FIRED -> 0;
        };
    }

    /** Diesel burnt for a heat, L. */
    public double fuelL(double heatKwh) {
        return source == Source.FUEL_FIRED ? heatKwh / fuelEfficiency / FuelKind.DIESEL.kwhPerL() : 0;
    }
}
