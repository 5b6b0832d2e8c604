package org.amberyard.core.duty;

/** Adds up the use of a run piece by piece without making a record for each. */
final class UseSum {
    private double drawnKwh;
    private double recoveredKwh;
    private double rollingKwh;
    private double dragKwh;
    private double climbingKwh;
    private double frictionBrakeKwh;
    private double drivelineKwh;
    private double packKwh;
    private double auxiliaryKwh;
    private double heatKwh;
    private double coolingKwh;
    private double packHeatKwh;
    private double heaterFuelL;
    private double heatShortKwh;

    /** Work of a piece driven a number of times. */
    void addWork(TractiveWork work, double times) {
        drawnKwh += times * work.drawnKwh();
        recoveredKwh += times * work.recoveredKwh();
        rollingKwh += times * work.rollingKwh();
        dragKwh += times * work.dragKwh();
        climbingKwh += times * work.climbingKwh();
        frictionBrakeKwh += times * work.frictionBrakeKwh();
        drivelineKwh += times * work.drivelineKwh();
    }

    void addAuxiliary(double kwh) {
        drawnKwh += kwh;
        auxiliaryKwh += kwh;
    }

    void addPackLoss(double kwh) {
        drawnKwh += kwh;
        packKwh += kwh;
    }

    void addHeat(double electricKwh, double fuelL) {
        drawnKwh += electricKwh;
        heatKwh += electricKwh;
        heaterFuelL += fuelL;
    }

    void addHeatShort(double kwh) {
        heatShortKwh += kwh;
    }

    void addCooling(double kwh) {
        drawnKwh += kwh;
        coolingKwh += kwh;
    }

    void addPackHeat(double kwh) {
        drawnKwh += kwh;
        packHeatKwh += kwh;
    }

    double drawnKwh() {
        return drawnKwh;
    }

    double batteryKwh() {
        return drawnKwh - recoveredKwh;
    }

    /** The use over a distance and time, with energy from the yard before departure and fuel of an engine. */
    EnergyUse toUse(double km, double hours, double gridKwh, double fuelL) {
        EnergyCauses causes = new EnergyCauses(rollingKwh, dragKwh, climbingKwh, frictionBrakeKwh, drivelineKwh, packKwh,
                auxiliaryKwh, heatKwh, coolingKwh, packHeatKwh, 0);
        return new EnergyUse(km, hours, drawnKwh, recoveredKwh, causes, gridKwh, fuelL, heaterFuelL, heatShortKwh);
    }
}
