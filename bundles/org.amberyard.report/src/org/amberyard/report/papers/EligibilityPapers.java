package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.funding.Bound;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.funding.OldBus;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** Whether each replaced bus may be paid for by the programme that is applied to, and which rule refuses it. */
final class EligibilityPapers {
    private static final String NOT_KNOWN = "–";

    private final PaperInput in;
    private final Programme programme;

    /** A replaced bus by its number in T1 and T2, with its purchase if it is one. */
    private record Line(int number, ReplacedBus bus, Optional<FundedLine> funded) {
        Optional<NewBus> bought() {
            return funded.flatMap(f -> f.purchase().bus());
        }

        Optional<OldBus> old() {
            return bought().flatMap(NewBus::old);
        }
    }

    private EligibilityPapers(PaperInput in, Programme programme) {
        this.in = in;
        this.programme = programme;
    }

    /** One table, or none where nothing is applied to. */
    static List<DataTable> of(PaperInput in) {
        Optional<String> name = ProjectMoney.of(in).programme();
        return in.study().funding().programmes().stream().filter(p -> name.filter(p.name()::equals).isPresent())
                .map(p -> new EligibilityPapers(in, p).table()).toList();
    }

    private DataTable table() {
        List<ReplacedBus> buses = in.replaced();
        List<Line> lines = IntStream.range(0, buses.size()).mapToObj(i -> new Line(i + 1, buses.get(i), funded(buses.get(i)))).toList();
        long eligible = lines.stream().filter(l -> refusals(l).isEmpty()).count();
        return new TableBuilder<Line>("T1c", "T1c. Eligibility for “" + programme.name() + "”, bus by bus")
                .text("Line", 0.5, l -> String.valueOf(l.number())).text("Old bus", 0.8, l -> l.bus().old().vehicle().unit())
                .text("New bus", 0.9, l -> l.bus().now().vehicle().unit())
                .text("Year", 0.6, l -> String.valueOf(in.calendar(l.bus().year())))
                .text("Old engine", 1.1, l -> l.old().map(o -> (o.diesel() ? "diesel, " : "no diesel, ") + o.engineModelYear())
                        .orElse(NOT_KNOWN))
                .text("Body, old and new", 1, l -> l.bought().map(n -> l.old().map(o -> bodies(o, n)).orElse(n.bodyType()))
                        .orElse(NOT_KNOWN))
                .text("One for one", 0.8, l -> l.bought().map(n -> n.oneLeaves() ? "yes" : "NO: none leaves").orElse(NOT_KNOWN))
                .text("Old bus leaves", 0.9, l -> l.old().map(o -> o.leaves() ? "yes" : "NO: moves on").orElse(NOT_KNOWN))
                .text("Eligible", 0.7, l -> refusals(l).isEmpty() ? "yes" : "NO")
                .text("Rule that refuses it", 4, l -> String.join("; ", refusals(l)))
                .note("Eligible: " + eligible + " of " + lines.size() + ". Rules of “" + programme.name() + "” as the study holds them: "
                        + rules() + ".")
                .note("Where they come from: " + source() + ".").of(lines);
    }

    private static String bodies(OldBus old, NewBus bought) {
        return old.bodyType().equals(bought.bodyType()) ? bought.bodyType() : "DIFFERS: " + old.bodyType() + ", " + bought.bodyType();
    }

    private Optional<FundedLine> funded(ReplacedBus bus) {
        return in.plan().funding().awards().lines().stream().filter(f -> f.purchase().bus().map(NewBus::unit)
                .filter(bus.now().vehicle().unit()::equals).isPresent()).findFirst();
    }

    private String rules() {
        String asked = Restrictions.of(in.study().funding(), programme);
        return "purchases of " + in.calendar(programme.firstYear()) + " to " + in.calendar(programme.lastYear())
                + (asked.isEmpty() ? "" : "; " + asked);
    }

    private List<String> refusals(Line line) {
        if (line.funded().isEmpty()) {
            return List.of("no bus is bought: " + line.bus().now().vehicle().unit() + " moves within the fleet");
        }
        FundedLine funded = line.funded().get();
        List<String> found = new ArrayList<>(funded.awards().stream()
                .filter(a -> in.study().funding().programmes().get(a.programme()) == programme)
                .flatMap(a -> a.bounds().stream()).filter(b -> b.limit().refuses()).map(Bound::words).toList());
        boolean named = funded.awards().stream().anyMatch(a -> in.study().funding().programmes().get(a.programme()) == programme);
        if (!named) {
            found.add("the plan does not name it for this bus");
            if (!programme.paysIn(line.bus().year())) {
                found.add("it pays for purchases of other years");
            }
            found.addAll(programme.conditions().failedBy(funded.purchase()));
        }
        return found;
    }

    private String source() {
        return ResultLine.all(in.facts().inputs(), "").stream().filter(l -> l.text("element").equals("programme " + programme.name()))
                .filter(l -> !l.text("source").isEmpty() && !l.text("quality").equals("default"))
                .map(l -> l.text("source") + (l.text("date").isEmpty() ? "" : ", " + l.text("date"))).findFirst()
                .orElse("no notice and no date are noted in the study; " + ApplicantFacts.BLANK);
    }
}
