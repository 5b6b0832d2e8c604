package org.amberyard.report.papers;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.Bound;
import org.amberyard.core.funding.Eligibility;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.Limit;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Refusal;
import org.amberyard.report.ProgrammeYears;

/**
 * The programme that is applied to, and what its rules say of every purchase of the plan.
 *
 * @param in what the document is made from
 * @param programme the programme
 * @param found what it says of each purchase
 */
record AppliedProgramme(PaperInput in, Programme programme, List<Eligibility> found) {

    /** Empty where nothing is applied to. */
    static Optional<AppliedProgramme> of(PaperInput in) {
        List<Programme> programmes = in.study().funding().programmes();
        Optional<String> name = ProjectMoney.of(in).programme();
        return IntStream.range(0, programmes.size()).filter(p -> name.filter(programmes.get(p).name()::equals).isPresent()).boxed()
                .findFirst().map(p -> new AppliedProgramme(in, programmes.get(p), Eligibility.of(in.study().funding(), p,
                        in.plan().funding().awards())));
    }

    boolean paysForBuses() {
        return !programme.offer().buses().isEmpty();
    }

    /** What it says of the purchase of a bus; empty where the bus is not bought. */
    Optional<Eligibility> ofBus(String unit) {
        return found.stream().filter(e -> e.line().purchase().bus().map(NewBus::unit).filter(unit::equals).isPresent()).findFirst();
    }

    /** Says that it pays nothing of the project, and why; empty where it pays. */
    static Optional<String> paysNothing(PaperInput in) {
        ProjectMoney money = ProjectMoney.of(in);
        return of(in).filter(a -> money.payingProgramme().isEmpty()).map(a -> "“" + a.programme.name()
                + "” pays nothing in this plan: " + a.reasons() + ".");
    }

    /** Why nothing is paid: what holds for all that the plan applies for, else everything that holds for a part of it. */
    private String reasons() {
        List<List<String>> each = found.stream().filter(Eligibility::applied).map(this::reasons).toList();
        List<String> all = each.stream().flatMap(List::stream).distinct().toList();
        List<String> common = all.stream().filter(r -> each.stream().allMatch(e -> e.contains(r))).toList();
        return each.isEmpty() ? "the plan applies to it for no purchase" : String.join("; ", common.isEmpty() ? all : common);
    }

    private List<String> reasons(Eligibility of) {
        List<String> rules = Stream.concat(of.refusals().stream().map(this::words), uncertain(of).map(Bound::words)).toList();
        return rules.isEmpty() ? awards(of).flatMap(a -> a.bite().stream()).map(Bound::words).toList() : rules;
    }

    private Stream<Bound> uncertain(Eligibility of) {
        return awards(of).flatMap(a -> a.bounds().stream()).filter(b -> b.limit() == Limit.UNCERTAIN);
    }

    /** True where the plan names the programme for a purchase but counts on certain awards only. */
    boolean isLeftOut(Eligibility of) {
        return uncertain(of).findAny().isPresent();
    }

    private Stream<Award> awards(Eligibility of) {
        return of.line().awards().stream().filter(a -> in.study().funding().programmes().get(a.programme()).equals(programme));
    }

    /** Verdict on a line of the plan, with the rules that refuse it. */
    String verdictWithRules(FundedLine line) {
        return found.stream().filter(e -> e.line() == line).findFirst().map(e -> e.isEligible() ? verdict(e)
                : "no: " + clauses(e, this::words)).orElse("");
    }

    /** Verdict in a word or two. */
    String verdict(Eligibility of) {
        if (!of.isEligible()) {
            return of.isNotTold() ? "not told" : "NO";
        }
        return isLeftOut(of) ? "eligible, left out as not certain" : of.applied() ? "yes" : "eligible, not applied for";
    }

    /** The rules that refuse a purchase. */
    String rules(Eligibility of) {
        return clauses(of, this::words);
    }

    /** Where these rules come from. */
    String sources(Eligibility of) {
        return clauses(of, r -> in.facts().rules().of(programme.name(), r.field()));
    }

    private String words(Refusal rule) {
        return ProgrammeYears.refusal(programme, in.study().baseYear(), rule);
    }

    /** Something of each rule that refuses a purchase, said once. */
    private static String clauses(Eligibility of, Function<Refusal, String> words) {
        return of.refusals().stream().map(words).distinct().collect(Collectors.joining("; "));
    }
}
