package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.battery.Warranty;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.VehicleTypeInput;
import org.amberyard.core.units.Unit;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** What can go wrong by the results, and what is done about it. */
final class RiskPapers {
    private final PaperInput in;
    private final List<Risk> risks = new ArrayList<>();

    /**
     * A risk.
     *
     * @param what what can happen
     * @param evidence what the study says
     * @param answer what is done about it
     * @param more what only the justification tables say; may be empty
     * @param found true where the evidence is a result, false where it is how the study counts
     */
    record Risk(String what, String evidence, String answer, String more, boolean found) {
        /** For a document without the justification tables. */
        String sentence() {
            return what + "." + (found ? spaced(evidence) : "") + spaced(answer);
        }
    }

    private RiskPapers(PaperInput in) {
        this.in = in;
    }

    static List<DataTable> table(PaperInput in) {
        return List.of(new TableBuilder<Risk>("T13", "T13. Risks and what is done about them").text("Risk", 1.6, Risk::what)
                .text("What the study says", 3, Risk::evidence).text("What is done", 3, r -> r.answer() + spaced(r.more())).toFill("Responsible", 1)
                .of(all(in)));
    }

    static List<Risk> all(PaperInput in) {
        RiskPapers papers = new RiskPapers(in);
        if (in.plan().service().get(in.study().years() - 1).ports() > 0) {
            papers.addRange();
            papers.addPower();
        }
        papers.addFunding();
        papers.addPacks();
        papers.add("Prices move", "The plan's cost rests on prices of buses, fuel and electricity over "
                + in.study().years() + " years." + spaced(SensitivityPapers.words(in)),
                "Reviewed yearly.", "Table T18 says at which price the answer turns.");
        papers.addCounted("A bus comes late, or before its port", "The study has buses and ports in service at the start of their year.",
                "Old buses stay until new ones are accepted; ports come first.");
        papers.addCounted("Chargers or buses stand", "The study counts failures to be expected, not every outage.",
                "Spares that can do the longest route, a port more than needed, terms of service in the purchase.");
        return List.copyOf(papers.risks);
    }

    private static String spaced(String words) {
        return words.isEmpty() ? "" : " " + words;
    }

    private void add(String what, String evidence, String answer) {
        add(what, evidence, answer, "");
    }

    private void add(String what, String evidence, String answer, String more) {
        risks.add(new Risk(what, evidence, answer, more, true));
    }

    private void addCounted(String what, String evidence, String answer) {
        risks.add(new Risk(what, evidence, answer, "", false));
    }

    private void addRange() {
        boolean midday = in.study().middayCharging();
        List<RouteAnswer> electric = RouteAnswer.of(in.result(), in.planIndex()).stream().filter(RouteAnswer::electric).toList();
        List<String> fails = electric.stream().filter(a -> !a.passesAged(midday))
                .map(a -> in.study().duty().routes().get(a.route()).name()).toList();
        add("A bus does not come home on the worst morning", fails.isEmpty()
                ? "All " + electric.size() + " electric routes hold on the coldest operated day, with an aged pack too."
                : "With an aged pack " + String.join(", ", fails) + " of " + electric.size()
                        + " electric routes fail on the coldest operated day.",
                "As packs age, buses move to shorter routes, charge between runs or get a new pack.",
                "See table T16.");
    }

    private void addPower() {
        OptionalInt connected = first(ServiceYear::connectedExceeds);
        OptionalInt planned = first(ServiceYear::demandExceeds);
        if (planned.isPresent()) {
            add("The service is too small", "Even charging as planned exceeds it from " + in.calendar(planned.getAsInt()) + ".",
                    "A larger service is asked of the utility before buses are ordered; it may take many months.");
        } else if (connected.isPresent()) {
            add("Load management fails", "All ports at full power would exceed the service from "
                    + in.calendar(connected.getAsInt())
                    + "; charging as planned stays within it.",
                    "A listed system that fails safe, or a larger service.");
        } else {
            add("The service is too small", "All ports at full power stay within it in every year.",
                    "The utility confirms it in writing.");
        }
    }

    private OptionalInt first(Predicate<ServiceYear> above) {
        return IntStream.range(0, in.plan().service().size()).filter(y -> above.test(in.plan().service().get(y))).findFirst();
    }

    private void addFunding() {
        ProjectMoney money = ProjectMoney.of(in);
        List<String> paid = in.study().funding().programmes().stream().filter(p -> money.paidBy(p.name()).signum() > 0)
                .map(p -> counted(p, money.paidBy(p.name()))).toList();
        if (!paid.isEmpty()) {
            add("A programme pays less, later or nothing", "The plan counts on " + String.join(" and on ", paid)
                    + ", in money of the years of purchase.", "Orders wait for the award; own money stands by, or the plan shrinks.");
        }
        ProgrammeMatch.all(in, money).stream().filter(m -> m.isAsked() && !m.open().isEmpty()).forEach(m -> add("The match of “"
                + m.programme().name() + "” is not secured",
                "It asks for " + in.currency() + " " + CellFormat.MONEY.print(
                        CellFormat.MONEY.rounded(m.asked().orElseThrow())) + "; of what counts, nobody has committed: "
                        + String.join("; ", m.open()) + ".",
                "Letters and resolutions are asked for before the application.",
                "See table T5c."));
    }

    private String counted(Programme programme, BigDecimal paid) {
        return "“" + programme.name() + "” for " + in.currency() + " " + CellFormat.MONEY.print(paid) + " (" + (programme.isCertain()
                ? "taken as certain" : "probability " + CellFormat.PERCENT.print(CellFormat.PERCENT.rounded(programme.probability())))
                + status(in.facts().funding().ofProgramme(programme.name())) + ")";
    }

    private static String status(FundingFacts.Secured secured) {
        return secured.status().isEmpty() || secured.committed() ? "" : "; it is " + secured.status();
    }

    private void addPacks() {
        long replaced = in.plan().fleet().events().stream().filter(FleetEvent.PackReplaced.class::isInstance).count();
        double cost = in.plan().ledger().amount(CostCategory.BATTERY_REPLACEMENT);
        add("Packs age faster than thought", replaced == 0 ? "No pack is replaced within the study." : replaced
                + (replaced == 1 ? " pack is" : " packs are") + " replaced for " + in.statedMoney() + " "
                + CellFormat.MONEY.print(CellFormat.MONEY.rounded(cost)) + ".", "Health is measured yearly.", warranties());
    }

    /** What makers promise of the packs that the plan has, as the types hold it. */
    private String warranties() {
        Map<Warranty, String> types = in.plan().fleet().years().stream().map(y -> in.study().types().get(y.vehicle().type()))
                .filter(t -> t.electric().isPresent() && t.prices().packs().warranty().years() > 0).distinct()
                .sorted(Comparator.comparing(VehicleTypeInput::name)).collect(Collectors.groupingBy(t -> t.prices().packs().warranty(),
                        LinkedHashMap::new, Collectors.mapping(VehicleTypeInput::name, Collectors.joining(", "))));
        return types.isEmpty() ? "The study holds no warranty of packs." : "By warranty the maker pays a part of "
                + types.entrySet().stream().map(e -> warranty(e.getValue(), e.getKey()))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private String warranty(String types, Warranty of) {
        return "packs of " + types + " that fall to " + ProgrammeTerms.percent(of.capacityShare()) + " of their capacity within "
                + BigDecimal.valueOf(of.years()).stripTrailingZeros().toPlainString() + " years and "
                + CellFormat.WHOLE.print(CellFormat.WHOLE.rounded(in.shown(Unit.KILOMETRE, of.km()))) + " " + in.symbol(Unit.KILOMETRE);
    }
}
