package org.amberyard.core.duty;

/** Energy of one run of one vehicle type at one outside temperature. */
final class RunEnergy {
    private final RunInput run;
    private final DrivePattern drive;
    private final double hours;
    private final double elevationM;
    private final double ridersKg;

    RunEnergy(RunInput run, DutyInput duty) {
        this.run = run;
        this.drive = new TraceSynthesis(duty.style()).of(run);
        this.hours = drive.totalS() / 3600;
        this.elevationM = duty.climate().elevationM();
        this.ridersKg = run.meanRiders() * duty.riderMassKg();
    }

    RunInput run() {
        return run;
    }

    EnergyUse use(VehicleSpec vehicle, double outsideC) {
        return vehicle instanceof ElectricSpec electric ? electricUse(electric, outsideC)
                : engineUse((EngineSpec) vehicle, outsideC);
    }

    private EnergyUse electricUse(ElectricSpec vehicle, double outsideC) {
        VehicleBody body = vehicle.body();
        TractiveWork work = work(body, outsideC, vehicle.recovery());
        double asked = body.cabin().heatKwh(outsideC, hours, run.stops(), run.meanRiders());
        double heat = vehicle.heater().broughtKwh(asked, hours);
        return new EnergyUse(run.distanceKm(), hours, work.drivingKwh() / body.drivelineEfficiency(),
                work.recoverableKwh() * vehicle.recovery().efficiency(), work.frictionKwh(), body.auxiliaryKw() * hours,
                vehicle.heater().electricKwh(heat, outsideC), body.cabin().coolingKwh(outsideC, hours), 0,
                vehicle.heater().fuelL(heat), asked - heat);
    }

    private EnergyUse engineUse(EngineSpec vehicle, double outsideC) {
        VehicleBody body = vehicle.body();
        TractiveWork work = work(body, outsideC, BrakeRecovery.NONE);
        double traction = work.drivingKwh() / body.drivelineEfficiency();
        double auxiliary = body.auxiliaryKw() * hours;
        double cooling = body.cabin().coolingKwh(outsideC, hours);
        return new EnergyUse(run.distanceKm(), hours, traction, 0, work.frictionKwh(), auxiliary, 0, cooling,
                vehicle.fuelL(traction + auxiliary + cooling, hours), 0, 0);
    }

    private TractiveWork work(VehicleBody body, double outsideC, BrakeRecovery recovery) {
        double density = StandardAtmosphere.densityKgPerM3(elevationM, outsideC);
        return TractiveWork.of(drive, body.roadLoad(ridersKg, density), recovery);
    }
}
