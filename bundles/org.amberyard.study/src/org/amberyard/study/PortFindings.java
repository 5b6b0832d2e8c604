package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.PortFleet;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
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
        addNight();
        addService();
        return List.copyOf(findings);
    }

    private void addCount() {
        for (int year = 0; year < input.years(); year++) {
            long electric = plan.fleet().inYear(year).stream().filter(v -> v.meterKwh() > 0).count();
            if (electric > ports.count(year)) {
                add(Severity.WARNING, year, String.format(Locale.ROOT,
                        "%d electric buses share %d ports; buy ports, or plan who swaps plugs at night", electric, ports.count(year)));
                return;
            }
        }
    }

    private void addNight() {
        for (int year = 0; year < input.years(); year++) {
            double possible = ports.connectedKw(year) * input.depot().window().hours() * ports.efficiency(year);
            double needed = plan.demand().get(year).batteryKwhOfNight();
            if (needed > possible) {
                add(Severity.WARNING, year, String.format(Locale.ROOT,
                        "the ports can bring %.0f kWh in a night but the buses need %.0f on the worst day", possible, needed));
                return;
            }
        }
    }

    /** The first year in which the ports exceed the service, and whether and when even spread charging does. */
    private void addService() {
        IntStream.range(0, input.years()).filter(y -> plan.service().get(y).connectedExceeds()).findFirst()
                .ifPresent(this::addService);
    }

    private void addService(int year) {
        OptionalInt spread = IntStream.range(year, input.years()).filter(y -> plan.service().get(y).spreadExceeds()).findFirst();
        ServiceYear first = plan.service().get(year);
        double most = plan.service().stream().mapToDouble(ServiceYear::spreadKva).max().orElseThrow();
        String spreadText = spread.isPresent()
                ? "and from " + (input.baseYear() + spread.getAsInt()) + " even charging spread evenly over the time that buses "
                        + "stand does (up to %.0f kVA)"
                : "while charging spread evenly over the time that buses stand (up to %.0f kVA) stays within it";
        add(spread.isPresent() ? Severity.WARNING : Severity.INFO, year, String.format(Locale.ROOT,
                "all ports at full power with the building's peak (%.0f kVA) exceed the service (%.0f kVA), " + spreadText
                        + "; the utility and a licensed electrician decide", first.connectedKva(), first.limitKva(), most));
    }

    private void add(Severity severity, int year, String text) {
        findings.add(new Finding(severity, study.getDepot(), null,
                "Plan “" + plan.name() + "”: from " + (input.baseYear() + year) + " " + text + "."));
    }
}
