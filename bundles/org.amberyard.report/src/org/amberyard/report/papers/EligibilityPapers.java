package org.amberyard.report.papers;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.funding.Eligibility;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.funding.OldBus;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Stacking;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/**
 * Whether each replaced bus may be paid for by the programme that is applied to, by the rules of the programme alone, and which
 * rule refuses it.
 */
final class EligibilityPapers {
    private static final String NOT_KNOWN = "–";
    /** What is checked where the programme asks for it, and what is not. */
    private static final String CHECKED = "“Not told”: the programme asks for the weight rating, days a week or owner of a bus, and the study does "
            + "not tell it; such a bus is not paid for until it is told. Not checked: liens, and what only the notice says.";

    private final PaperInput in;
    private final AppliedProgramme applied;
    private final Programme programme;
    private final List<Line> lines;

    /** A replaced bus by its number in T1 and T2, with what the programme says of its purchase if it is one. */
    private record Line(int number, ReplacedBus bus, Optional<Eligibility> found) {
        Optional<NewBus> bought() {
            return found.flatMap(f -> f.line().purchase().bus());
        }

        Optional<OldBus> old() {
            return bought().flatMap(NewBus::old);
        }
    }

    private EligibilityPapers(PaperInput in, AppliedProgramme applied) {
        this.in = in;
        this.applied = applied;
        this.programme = applied.programme();
        List<ReplacedBus> buses = in.replaced();
        this.lines = IntStream.range(0, buses.size()).mapToObj(i -> new Line(i + 1, buses.get(i), applied.ofBus(buses.get(i).now()
                .vehicle().unit()))).toList();
    }

    /** One table, or none where nothing is applied to, or a programme that pays for no buses. */
    static List<DataTable> of(PaperInput in) {
        return AppliedProgramme.of(in).filter(AppliedProgramme::paysForBuses).map(a -> new EligibilityPapers(in, a).table()).stream()
                .toList();
    }

    /** Says that a programme pays for no buses where that is why there is no table; else nothing. */
    static String noTable(PaperInput in) {
        return AppliedProgramme.of(in).filter(a -> !a.paysForBuses()).map(a -> "“" + a.programme().name()
                + "” pays for no buses, so there is no table T1c of their eligibility. ").orElse("");
    }

    /** What the old bus runs on, as in table T1a. */
    private String fuel(ReplacedBus bus) {
        return in.study().types().get(bus.old().vehicle().type()).engine().map(e -> e.fuel().word()).orElse("electric");
    }

    private DataTable table() {
        return new TableBuilder<Line>("T1c", "T1c. Eligibility for “" + programme.name() + "”, bus by bus")
                .text("Line", 0.5, l -> String.valueOf(l.number())).text("Old bus", 0.6, l -> l.bus().old().vehicle().unit())
                .text("New bus", 0.7, l -> l.bus().now().vehicle().unit())
                .year("Year", l -> OptionalInt.of(in.calendar(l.bus().year())))
                .text("Old engine", 1.1, l -> l.old().map(o -> fuel(l.bus()) + ", " + o.engineModelYear()).orElse(NOT_KNOWN))
                .text("Body, old and new", 0.8, l -> l.bought().map(n -> l.old().map(o -> bodies(o, n)).orElse(n.bodyType()))
                        .orElse(NOT_KNOWN))
                .text("One for one", 0.6, l -> l.bought().map(n -> n.oneLeaves() ? "yes" : "NO: none leaves").orElse(NOT_KNOWN))
                .text("Old bus leaves", 0.9, l -> l.old().map(o -> o.leaves() ? "yes" : "NO: moves on").orElse(NOT_KNOWN))
                .text("Eligible", 1, l -> l.found().map(applied::verdict).orElse("NO"))
                .text("Rule that refuses it", 3.2, l -> l.found().map(applied::rules).orElseGet(() -> "no bus is bought: "
                        + l.bus().now().vehicle().unit() + " moves within the fleet"))
                .text("Where the rule comes from", 3.4, l -> l.found().map(applied::sources).orElse(""))
                .note(count()).note("Rules of “" + programme.name() + "” as the study holds them: " + Restrictions.of(in, programme) + ".")
                .note("Where they come from: " + in.facts().rules().of(programme.name()) + ".").note(CHECKED).of(lines);
    }

    private static String bodies(OldBus old, NewBus bought) {
        return old.bodyType().equals(bought.bodyType()) ? bought.bodyType() : "DIFFERS: " + old.bodyType() + ", " + bought.bodyType();
    }

    private String count() {
        List<Eligibility> eligible = lines.stream().flatMap(l -> l.found().stream()).filter(Eligibility::isEligible).toList();
        long named = eligible.stream().filter(Eligibility::applied).count();
        long leftOut = eligible.stream().filter(applied::isLeftOut).count();
        return "Eligible by the rules of the programme, whatever the plan applies for: " + eligible.size() + " of " + lines.size()
                + "; applied for: " + (named - leftOut) + " of these" + (leftOut == 0 ? "." : "; left out, since the plan counts on certain awards only: "
                        + leftOut + ".")
                + (ProgrammeTerms.limitsBuses(programme) ? " Of the " + programme.budget().maxBuses() + " buses that it takes at most, "
                        + "those applied for come first; who is first: " + Stacking.ORDER_WORDS + "." : "");
    }
}
