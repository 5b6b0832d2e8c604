package org.amberyard.study.begin;

import org.amberyard.model.common.BodyType;

/**
 * Figures of a bus of a body type that stand in until somebody enters the maker's: small bodies are lighter, narrower and take less heat than
 * large ones. All are common practice, no source; those of type C are the defaults of the model but for the mass of an electric bus, which is
 * that of an engine bus and 1 to 2 t more (from memory).
 *
 * @param engineKg curb mass of an engine bus, kg
 * @param electricKg curb mass of an electric bus, kg
 * @param frontalAreaM2 frontal area, m²
 * @param auxiliaryKw power of auxiliaries, kW
 * @param cabinLossKwPerK heat loss of the cabin, kW/K
 * @param freshAirM3PerH fresh air, m³/h
 * @param doorLossKwhPerK heat lost at an opening of the door, kWh/K
 * @param soakKwhPerK heat to warm up the cabin, kWh/K
 * @param sunApertureM2 area through which the sun heats, m²
 * @param idleFuelLPerH fuel of an idling diesel engine, L/h
 * @param packKwh nominal energy of a usual pack, kWh
 * @param motorKw power of the motor, kW
 * @param recoveryKw power that braking gives back at most, kW
 * @param heaterKw output of the heater, kW
 * @param engineBus price of a new engine bus
 * @param electricBus price of a new electric bus
 */
record BodyFigures(double engineKg, double electricKg, double frontalAreaM2, double auxiliaryKw, double cabinLossKwPerK, double freshAirM3PerH,
        double doorLossKwhPerK, double soakKwhPerK, double sunApertureM2, double idleFuelLPerH, double packKwh, double motorKw, double recoveryKw,
        double heaterKw, double engineBus, double electricBus) {
    private static final BodyFigures A =
            new BodyFigures(4900, 6100, 5.4, 1.5, 0.11, 250, 0.003, 0.07, 1.8, 1.3, 115, 95, 80, 12, 95_000, 250_000);
    private static final BodyFigures B =
            new BodyFigures(6000, 7300, 6.0, 1.7, 0.14, 300, 0.0035, 0.09, 2.3, 1.45, 130, 110, 90, 15, 120_000, 290_000);
    private static final BodyFigures C =
            new BodyFigures(8200, 9600, 7.0, 2, 0.2, 400, 0.004, 0.12, 3, 1.66558118496, 150, 130, 100, 20, 165_000, 370_000);
    private static final BodyFigures D =
            new BodyFigures(9300, 10_900, 7.2, 2.2, 0.23, 450, 0.0045, 0.14, 3.4, 1.9, 210, 160, 130, 24, 190_000, 410_000);

    static BodyFigures of(BodyType body) {
        return switch (body) {
            case A -> A;
            case B -> B;
            case C -> C;
            case D -> D;
        };
    }
}
