package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.PortFleet;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.yard.YardYear;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** Findings on a plan's ports and the electric service behind them; each names the first year in which it holds. */
final class PortFindings {
    private final Study study;
    private final StudyInput input;
    private final PlanResult plan;
    private final PortFleet ports;
    private final List<Finding> findings = new ArrayList<>();

    PortFindings(Study study, StudyResult result, int plan) {
        this.study = study;
        this.input = result.input();
        this.plan = result.plans().get(plan);
        this.ports = new PortFleet(input.depot(), this.plan.plan().ports());
    }

    List<Finding> list() {
        addCount();
        addShortfall();
        addService();
        return List.copyOf(findings);
    }

    private void addCount() {
        for (int year = 0; year < input.years(); year++) {
            long electric = plan.fleet().inYear(year).stream().filter(v -> v.meterKwh() > 0).count();
            int plugs = ports.units(year).stream().mapToInt(PortUnit::plugs).sum();
            if (electric > plugs) {
                add(Severity.WARNING, year, String.format(Locale.ROOT,
                        "%d electric buses share %d plugs; buy ports, or plan who swaps plugs at night", electric, plugs));
                return;
            }
        }
    }

    /** The first year in which a bus leaves without its charge; named with the month and the day. */
    private void addShortfall() {
        for (int year = 0; year < input.years(); year++) {
            for (YardYear.Month month : plan.yards().get(year).months()) {
                if (!month.shortfalls().isEmpty()) {
                    YardYear.Shortfall first = month.shortfalls().get(0);
                    add(Severity.WARNING, year, String.format(Locale.ROOT, "%s (%s, %s)%s", first.shortfall().words(),
                            MonthNames.full(month.month()), first.stretch(), others(year, first.shortfall().plugIn().label())));
                    return;
                }
            }
        }
    }

    /** Other buses that leave without theirs in the year. */
    private String others(int year, String first) {
        List<String> others = plan.yards().get(year).busesShort().stream().filter(l -> !l.equals(first)).toList();
        return others.isEmpty() ? "" : "; other buses are short too: " + String.join(", ", others);
    }

    /** The first year in which the ports exceed the service, and whether and when even charging as planned does. */
    private void addService() {
        IntStream.range(0, input.years()).filter(y -> plan.service().get(y).connectedExceeds()).findFirst()
                .ifPresent(this::addService);
    }

    private void addService(int year) {
        OptionalInt demand = IntStream.range(year, input.years()).filter(y -> plan.service().get(y).demandExceeds()).findFirst();
        ServiceYear first = plan.service().get(year);
        double most = plan.service().stream().mapToDouble(ServiceYear::demandKva).max().orElseThrow();
        String demandText = demand.isPresent()
                ? "and from " + (input.baseYear() + demand.getAsInt()) + " even charging as planned does (up to %.0f kVA)"
                : "while charging as planned (up to %.0f kVA) stays within it";
        add(demand.isPresent() ? Severity.WARNING : Severity.INFO, year, String.format(Locale.ROOT,
                "all ports at full power with the building's peak (%.0f kVA) exceed the service (%.0f kVA), " + demandText
                        + "; the utility and a licensed electrician decide",
                first.connectedKva(), first.limitKva(), most));
    }

    private void add(Severity severity, int year, String text) {
        findings.add(new Finding(severity, study.getDepot(), null,
                "Plan “" + plan.name() + "”: from " + (input.baseYear() + year) + " " + text + "."));
    }
}
