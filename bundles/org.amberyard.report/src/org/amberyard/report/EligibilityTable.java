package org.amberyard.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.funding.Eligibility;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.funding.OldBus;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;

/** Which electric buses that a plan buys each programme may pay for by its rules, applied for or not, and which rule refuses others. */
final class EligibilityTable {
    private static final String YES = "yes";
    private static final String NO = "no";
    private static final String NOT_TOLD = "not told";

    private EligibilityTable() {
    }

    /** An electric bus that a plan buys, before a programme that pays for such. */
    record Row(StudyResult result, PlanResult plan, Programme programme, Eligibility found, NewBus bus) {
        static List<Row> all(StudyResult result) {
            return result.plans().stream().flatMap(plan -> IntStream.range(0, result.input().funding().programmes().size()).boxed()
                    .flatMap(place -> of(result, plan, place))).toList();
        }

        private static Stream<Row> of(StudyResult result, PlanResult plan, int place) {
            Programme programme = result.input().funding().programmes().get(place);
            if (programme.offer().buses().isEmpty()) {
                return Stream.empty();
            }
            return Eligibility.of(result.input().funding(), place, plan.funding().awards()).stream()
                    .flatMap(found -> found.line().purchase().bus().stream().filter(NewBus::electric)
                            .map(bus -> new Row(result, plan, programme, found, bus)));
        }

        private Optional<OldBus> old() {
            return bus.old();
        }

        private String ofOld(Predicate<OldBus> question) {
            return old().map(o -> question.test(o) ? YES : NO).orElse(null);
        }

        private String verdict() {
            return found.isNotTold() ? NOT_TOLD : yes(found.isEligible());
        }

        private String refusals() {
            return found.isEligible() ? null : found.refusals().stream().map(r -> ProgrammeYears.refusal(programme,
                    result.input().baseYear(), r)).distinct().collect(Collectors.joining("; "));
        }
    }

    static TableDefinition<Row> table() {
        return new TableDefinition<>("eligibility", "Eligible buses by programme", Row::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .text("programme", "Programme", "A programme that pays for electric buses.", r -> r.programme().name())
                .year("year", "Year", "Year of the purchase.", r -> r.result().input().baseYear() + r.found().line().purchase().year())
                .text("unit", "New bus", "Number of the electric bus that the plan buys.", r -> r.bus().unit())
                .heads()
                .text("eligible", "Eligible", "Whether the programme may pay for it by its rules, applied for or not; "
                        + "“not told” where nothing speaks against it but that what the programme asks for is not told.", Row::verdict)
                .text("rule", "Rule that refuses it", "What the rules of the programme have against it; empty where it is eligible.",
                        Row::refusals)
                .text("applied", "Applied for", "Whether the plan names the programme for it.", r -> yes(r.found().applied()))
                .text("old_bus", "Old bus", "Number of the bus whose place it takes; empty where it takes none.",
                        r -> r.old().map(OldBus::unit).orElse(null))
                .text("old_diesel", "Old bus is diesel", "Whether the old bus has a diesel engine.", r -> r.ofOld(OldBus::diesel))
                .optionalYear("old_engine_year", "Model year of the old engine", "Model year of the engine of the old bus, which programmes test.",
                        r -> r.old().map(o -> OptionalInt.of(o.engineModelYear())).orElse(OptionalInt.empty()))
                .text("old_body", "Body of the old bus", "Body type of the old bus.", r -> r.old().map(OldBus::bodyType).orElse(null))
                .text("new_body", "Body of the new bus", "Body type of the new bus.", r -> r.bus().bodyType())
                .text("one_for_one", "One leaves for it", "Whether a bus leaves the fleet for it.", r -> yes(r.bus().oneLeaves()))
                .text("old_leaves", "Old bus leaves", "Whether the old bus itself leaves the fleet, as scrapping asks; else it moves to another place.",
                        r -> r.ofOld(OldBus::leaves));
    }

    private static String yes(boolean fact) {
        return fact ? YES : NO;
    }
}
