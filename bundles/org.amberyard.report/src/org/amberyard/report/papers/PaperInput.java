package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.EngineVersion;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.plan.ReplacedBuses;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.report.document.Document;

/**
 * What documents are made from.
 *
 * @param result results of the study
 * @param planIndex place of the plan that the documents are about
 * @param facts what the study knows beside its results
 * @param choices what the maker of the documents chose
 * @param whatIf what a what-if of the study as it is has found; empty where none was run
 */
public record PaperInput(StudyResult result, int planIndex, StudyFacts facts, PaperChoices choices, Optional<WhatIfResults> whatIf) {
    private static final Set<String> SAID_BESIDE = Set.of("Project", "Years");

    /** Without a what-if. */
    public PaperInput(StudyResult result, int planIndex, StudyFacts facts, PaperChoices choices) {
        this(result, planIndex, facts, choices, Optional.empty());
    }

    PlanResult plan() {
        return result.plans().get(planIndex);
    }

    StudyInput study() {
        return result.input();
    }

    UnitSystem system() {
        return facts.system();
    }

    String currency() {
        return study().currency();
    }

    /** The engine buses that the plan replaces otherwise than the baseline. */
    List<ReplacedBus> replaced() {
        return ReplacedBuses.of(result, planIndex);
    }

    Optional<Comparison> comparison() {
        return result.comparisons().stream().filter(c -> c.plan() == planIndex).findFirst();
    }

    int calendar(int year) {
        return study().baseYear() + year;
    }

    /** A figure in the units of the study. */
    double shown(Unit unit, double stored) {
        return unit.show(stored, system());
    }

    /** Symbol of a unit in the units of the study. */
    String symbol(Unit unit) {
        return unit.symbol(system(), currency());
    }

    /** In which money and at which rate costs are stated, as a sentence. */
    String moneyWords() {
        MoneyRules money = study().money();
        boolean nominal = money.basis() == MoneyBasis.NOMINAL;
        return String.format(Locale.ROOT, "Costs are in %s, discounted to the start of %s at %.2f\u00a0%% a year %s.",
                statedMoney(), money.fiscal().name(study().baseYear()),
                100 * money.rates().rateFor(money.basis()), nominal ? "nominal" : "above general inflation of "
                        + String.format(Locale.ROOT, "%.1f\u00a0%%", 100 * money.rates().inflation()));
    }

    /** The money that costs are stated in, such as constant 2026 USD. */
    String statedMoney() {
        return (study().money().basis() == MoneyBasis.NOMINAL ? "nominal " : "constant " + study().baseYear() + " ") + currency();
    }

    /** What every document says of itself below its title. */
    List<Document.Fact> documentFacts() {
        List<Document.Fact> lines = new ArrayList<>();
        lines.add(new Document.Fact("Project", study().name()));
        lines.add(new Document.Fact("Applicant", ApplicantFacts.orBlank(facts.applicant().name())));
        lines.add(new Document.Fact("Plan", plan().name() + (planIndex == study().baseline() ? " (the baseline)"
                : ", compared with “" + result.baseline().name() + "”")));
        lines.add(new Document.Fact("Years", calendar(0) + " to " + calendar(study().years() - 1)));
        lines.add(new Document.Fact("Version", "study " + facts.version() + ", computed by Amberyard " + EngineVersion.VALUE));
        lines.add(choices.dated().map(d -> new Document.Fact("Evaluated", d)).orElse(new Document.Fact("Date", ApplicantFacts.BLANK)));
        return lines;
    }

    /** The same in few lines, where the title has the project and the document its years. */
    List<Document.Fact> factsInShort() {
        return documentFacts().stream().filter(f -> !SAID_BESIDE.contains(f.label())).toList();
    }

    /** The line at the foot of every page. */
    String running(String title) {
        String applicant = facts.applicant().name();
        return title + " · " + study().name() + (applicant.isEmpty() ? "" : " · " + applicant) + " · study " + facts.version() + " · Amberyard "
                + EngineVersion.VALUE
                + choices.dated().map(d -> " · " + d).orElse("");
    }
}
