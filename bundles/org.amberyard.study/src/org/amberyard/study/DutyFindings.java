package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.plan.BusInput;
import org.amberyard.core.plan.Role;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** Findings on the duty, whatever the plan: schedules that cannot be driven, heaters that are too small, spare distance. */
final class DutyFindings {
    private static final double TOLERANCE_MIN = 1;
    private static final double SPARE_TOLERANCE = 0.1;

    private final Study study;
    private final StudyResult result;
    private final StudyInput input;
    private final List<Finding> findings = new ArrayList<>();

    DutyFindings(Study study, StudyResult result) {
        this.study = study;
        this.result = result;
        this.input = result.input();
    }

    List<Finding> list() {
        for (int route = 0; route < input.duty().routes().size(); route++) {
            addSchedules(route);
            for (int type = 0; type < input.types().size(); type++) {
                addHeater(route, type);
            }
        }
        input.duty().routes().stream().map(r -> r.bodyType()).distinct().sorted().forEach(this::addSpares);
        return List.copyOf(findings);
    }

    private void addSchedules(int route) {
        List<RunInput> runs = input.duty().routes().get(route).runs();
        List<Double> minutes = result.duty().drivenMin(route);
        for (int run = 0; run < runs.size(); run++) {
            RunInput planned = runs.get(run);
            if (minutes.get(run) > planned.durationMin() + TOLERANCE_MIN) {
                findings.add(new Finding(Severity.WARNING, study.getRoutes().get(route).getRuns().get(run), null,
                        String.format(Locale.ROOT, "Run %s of route %s takes %.0f minutes with its stops and top speed but is "
                                + "scheduled for %.0f; correct the duration, the stops or the top speed.", planned.name(),
                                input.duty().routes().get(route).name(), minutes.get(run), planned.durationMin())));
            }
        }
    }

    private void addHeater(int route, int type) {
        double shortKwh = result.duty().use(route, type).stream().flatMap(u -> u.designDays().stream())
                .mapToDouble(d -> d.overnight().legs().stream().mapToDouble(l -> l.use().heatShortKwh() / l.use().hours()).max().orElse(0))
                .max().orElse(0);
        if (shortKwh > 1) {
            findings.add(new Finding(Severity.INFO, study.getVehicleTypes().get(type), null, String.format(Locale.ROOT,
                    "The heater of %s is %.0f kW too small for route %s on the coldest day: the cabin stays colder than %s.",
                    input.types().get(type).name(), shortKwh, input.duty().routes().get(route).name(), cabin(type))));
        }
    }

    private String cabin(int type) {
        UnitSystem units = StudyUnits.of(study);
        double setpoint = input.types().get(type).spec().body().cabin().setpointC();
        return String.format(Locale.ROOT, "%.0f %s", Unit.CELSIUS.show(setpoint, units), Unit.CELSIUS.symbol(units, ""));
    }

    /** The distance that spares take over from the routes should be what the spares are said to drive. */
    private void addSpares(String bodyType) {
        double covered = 0;
        double spares = 0;
        for (BusInput bus : input.buses()) {
            boolean fits = input.types().get(bus.type()).spec().body().bodyType().equals(bodyType);
            if (fits && bus.route().isPresent()) {
                covered += input.rules().spareCoverShare()
                        * result.duty().use(bus.route().getAsInt(), bus.type()).map(u -> u.year().km()).orElse(0.0);
            } else if (fits && bus.role() == Role.SPARE) {
                spares += bus.otherKmPerYear();
            }
        }
        if (Math.abs(spares - covered) > SPARE_TOLERANCE * Math.max(covered, spares)) {
            UnitSystem units = StudyUnits.of(study);
            findings.add(new Finding(Severity.WARNING, study.getSettings(), null, String.format(Locale.ROOT,
                    "Spares of body type %s drive %,.0f %s a year but cover for %,.0f; correct the days covered by spares or the "
                            + "other distance of the spares, else distance is lost or counted twice.",
                    bodyType, Unit.KILOMETRE.show(spares, units), Unit.KILOMETRE.symbol(units, ""),
                    Unit.KILOMETRE.show(covered, units))));
        }
    }
}
