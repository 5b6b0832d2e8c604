package org.amberyard.core.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.upkeep.UpkeepCalibration;
import org.amberyard.core.upkeep.UpkeepRules;

/**
 * How far upkeep by tasks or rates misses the work orders of the present fleet, by vehicle type. Every bus of a type is
 * multiplied by the factor of its type, later ones of the same type included; a type of which no bus was measured keeps what its
 * tasks or its rate say.
 */
public final class UpkeepCalibrations {
    private final StudyInput study;
    private final List<UpkeepCalibration> types;

    private UpkeepCalibrations(StudyInput study, List<UpkeepCalibration> types) {
        this.study = study;
        this.types = List.copyOf(types);
    }

    /** The calibrations of a study; they do not depend on the plan. */
    public static UpkeepCalibrations of(StudyInput study, DutyTable duty) {
        return of(study, duty, new BusWear(study.duty()));
    }

    static UpkeepCalibrations of(StudyInput study, DutyTable duty, BusWear wear) {
        YearOfDriving driving = new YearOfDriving(study, duty, new PortFleet(study.depot(), List.of()));
        PresentFleet present = new PresentFleet(study, new PackSoFar(study, duty, driving));
        return new UpkeepCalibrations(study, IntStream.range(0, study.types().size()).mapToObj(type -> orEarlier(study, type, IntStream
                .range(0, study.buses().size()).filter(place -> study.buses().get(place).type() == type)
                .mapToObj(place -> present.standing(place).map(bus -> of(study, wear, driving.of(0, place, bus).record()))
                        .orElse(UpkeepCalibration.NONE))
                .reduce(UpkeepCalibration.NONE, UpkeepCalibration::plus))).toList());
    }

    private static UpkeepCalibration orEarlier(StudyInput study, int type, UpkeepCalibration measured) {
        Double earlier = study.rules().upkeep().earlierFactors().get(study.types().get(type).name());
        return measured.buses() > 0 || earlier == null ? measured : UpkeepCalibration.ofEarlier(earlier);
    }

    private static UpkeepCalibration of(StudyInput study, BusWear wear, VehicleYear record) {
        UpkeepRules rules = study.rules().upkeep();
        Double measuredPerKm = rules.measuredPerKm().get(record.vehicle().unit());
        EnergyUse use = record.use();
        if (measuredPerKm == null || use.km() <= 0) {
            return UpkeepCalibration.NONE;
        }
        BusInput bus = study.buses().get(record.place());
        TypeUpkeep type = new TypeUpkeep(study.types().get(bus.type()), rules);
        double modelled = type.meanPerYear(wear.of(type, use, bus.idleHoursPerYear(), bus.route()),
                record.vehicle().ageYears(0));
        return UpkeepCalibration.of(use.km(), modelled, measuredPerKm);
    }

    /** Of a type by its place in the list of types. */
    public UpkeepCalibration of(int type) {
        return types.get(type);
    }

    /** True when tasks apply to a type; it costs by its rate otherwise. */
    public boolean byTasks(int type) {
        return new TypeUpkeep(study.types().get(type), study.rules().upkeep()).hasTasks();
    }

    /** Of a type of the study. */
    UpkeepCalibration of(VehicleTypeInput type) {
        return types.get(study.types().indexOf(type));
    }
}
