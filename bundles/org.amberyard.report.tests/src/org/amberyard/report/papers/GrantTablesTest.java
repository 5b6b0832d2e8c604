package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.plan.PlaceholderUse;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.units.Unit;
import org.amberyard.core.why.Derivation;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.Ownership;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.PrintRounding;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class GrantTablesTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static PaperInput in;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
    }

    private static DataTable table(GrantTable of, int place) {
        return of.of(in).get(place);
    }

    private static DataTable.Row totals(DataTable table) {
        return table.rows().stream().filter(r -> r.kind() == DataTable.Kind.TOTAL).findFirst().orElseThrow();
    }

    private static BigDecimal total(DataTable table, String heading) {
        return (BigDecimal) totals(table).cells().get(ExamplePapers.column(table, heading));
    }

    @Test
    void totalsAreTheUnroundedFiguresOfTheResults() {
        DataTable use = table(GrantTable.T1, 1);
        assertRounded(Unit.KILOMETRE.show(of(b -> b.old().use().km()), in.system()), total(use, "Distance a year"));
        assertRounded(Unit.LITRE.show(of(b -> b.old().use().fuelL()), in.system()), total(use, "Fuel a year"));
        DataTable shop = table(GrantTable.T14, 0);
        assertRounded(ResultLine.of(in, "shop_by_year").stream().mapToDouble(l -> l.number("technician_labour").orElseThrow()).sum(),
                total(shop, "Technicians"));
        DataTable annual = table(GrantTable.T6, 0);
        int at = 3;
        for (Pollutant pollutant : List.of(Pollutant.NOX, Pollutant.PM25, Pollutant.HC, Pollutant.CO, Pollutant.CO2)) {
            for (Function<ReplacedBus, Masses> masses : List.<Function<ReplacedBus, Masses>>of(b -> b.before().exhaust(),
                    b -> b.after().exhaust(), ReplacedBus::reducedExhaust)) {
                BigDecimal total = (BigDecimal) totals(annual).cells().get(at++);
                assertRounded(of(b -> masses.apply(b).kg(pollutant)) / GrantTerms.KG_PER_SHORT_TON, total);
            }
        }
    }

    private static double of(ToDoubleFunction<ReplacedBus> figure) {
        return in.replaced().stream().mapToDouble(figure).sum();
    }

    private static void assertRounded(double unrounded, BigDecimal printed) {
        assertEquals(PrintRounding.rounded(unrounded, printed.scale()), printed);
    }

    @Test
    void theBudgetIsProvenByUnroundedSums() {
        double bought = ProjectMoney.of(in).lines().stream().mapToDouble(l -> l.funded().purchase().cost()).sum();
        for (DataTable budget : GrantTable.T4.of(in)) {
            DataTable.Row check = budget.rows().get(budget.rows().size() - 1);
            assertEquals(DataTable.Kind.CHECK, check.kind());
            assertEquals("Check, unrounded: balances", check.cells().get(0));
            assertEquals(bought, figure(budget, check, "Total").doubleValue(), 0.005);
            BigDecimal across = check.cells().stream().filter(BigDecimal.class::isInstance).map(BigDecimal.class::cast)
                    .reduce(BigDecimal.ZERO, BigDecimal::add).subtract(figure(budget, check, "Total"));
            assertEquals(bought, across.doubleValue(), 0.04, "seven sources to the cent");
            assertEquals(bought, total(budget, "Total").doubleValue(), 0.5 * ProjectMoney.of(in).lines().size());
        }
    }

    @Test
    void aBudgetWhoseSourcesExceedItsCostsDoesNotBalance() {
        ProjectMoney money = ProjectMoney.of(in);
        ProjectMoney.Line line = money.lines().stream().filter(l -> l.funded().funded() > 0).findFirst().orElseThrow();
        Award paid = line.funded().awards().stream().filter(a -> a.paid() > 0).findFirst().orElseThrow();
        Award greater = new Award(paid.programme(), Derivation.of("more", 10 * line.funded().purchase().cost(), Derivation.MONEY, ""),
                List.of());
        ProjectMoney.Line over = new ProjectMoney.Line(new FundedLine(line.funded().purchase(), List.of(greater)), line.cost(),
                line.shares());
        assertTrue(money.balances());
        assertFalse(new ProjectMoney(List.of(over), money.programme(), money.programmes()).balances());
    }

    @Test
    void awardsThatAreNotCertainAreSaidToBeCountedInFull() {
        Study study = EXAMPLE.study();
        study.getProgrammes().stream().filter(p -> p.getName().equals("Make-ready")).forEach(p -> p.setProbability(0.4));
        PaperInput unsure = EXAMPLE.in(study, ExamplePapers.tables(GrantTable.T5));
        for (DataTable table : GrantTable.T5.of(unsure)) {
            assertTrue(table.notes().contains("Counted in full, though not certain: “Make-ready”, probability 40 %. Expected money "
                    + "is less."), table.notes().toString());
        }
        String summary = GrantSet.of(unsure).sections().get(0).blocks().toString();
        assertTrue(summary.contains("if all awards are made that are not certain (“Make-ready”, probability 40 %)"), summary);
        assertFalse(GrantSet.of(in).sections().get(0).blocks().toString().contains("not certain"));
    }

    @Test
    void theTablesOfMoneyAgreeWithEachOtherDownAndAcross() {
        BigDecimal project = total(table(GrantTable.T4, 0), "Total");
        assertEquals(project, total(table(GrantTable.T4, 1), "Total"));
        assertEquals(project, total(table(GrantTable.T5, 0), "Amount"));
        assertEquals(project, total(table(GrantTable.T5, 1), "Cost"));
        assertEquals(total(table(GrantTable.T5, 1), "Own money"), total(table(GrantTable.T4, 0), "Match, own cash"));
        DataTable budget = table(GrantTable.T4, 0);
        for (DataTable.Row row : budget.rows().stream().filter(r -> r.kind() != DataTable.Kind.CHECK).toList()) {
            BigDecimal across = IntStream.range(1, ExamplePapers.column(budget, "Total")).mapToObj(row.cells()::get)
                    .filter(BigDecimal.class::isInstance)
                    .map(BigDecimal.class::cast).reduce(BigDecimal.ZERO, BigDecimal::add);
            assertEquals(0, across.compareTo((BigDecimal) row.cells().get(ExamplePapers.column(budget, "Total"))));
        }
        BigDecimal buses = (BigDecimal) budget.rows().get(0).cells().get(ExamplePapers.column(budget, "Total"));
        assertEquals(project, buses.add(total(table(GrantTable.T3, 0), "Total")));
    }

    @Test
    void theBudgetLeadsToTheCostOfATonInPrint() {
        DataTable bridge = table(GrantTable.T8, 1);
        DataTable budget = table(GrantTable.T4, 0);
        DataTable.Row first = bridge.rows().get(0);
        assertEquals(total(budget, "Total"), figure(bridge, first, "Capital"));
        assertEquals(total(budget, "Total").subtract(total(budget, "Match, own cash")), figure(bridge, first, "Grants"));
        DataTable perTon = table(GrantTable.T8, 0);
        for (DataTable.Row row : perTon.rows()) {
            BigDecimal cost = switch (row.cells().get(ExamplePapers.column(perTon, "Money")).toString()) {
                case "capital" -> total(bridge, "Capital");
                case "all programmes" -> total(bridge, "Grants");
                default -> total(budget, "Requested: Clean Fleet Fund");
            };
            assertEquals(cost, figure(perTon, row, "Cost"));
        }
    }

    @Test
    void inflationIsWhatPartsTheMoneyOfTheBudgetFromConstantMoney() {
        DataTable bridge = table(GrantTable.T8, 1);
        double inflation = in.study().money().rates().inflation();
        double taken = ProjectMoney.of(in).lines().stream().map(l -> l.funded().purchase())
                .mapToDouble(p -> p.cost() * (Math.pow(1 + inflation, -p.year()) - 1)).sum();
        assertTrue(taken < -1000);
        assertEquals(taken, figure(bridge, bridge.rows().get(2), "Capital").doubleValue(), bridgeRounding());
        double yard = in.result().baseline().funding().awards().lines().stream().map(FundedLine::purchase)
                .filter(p -> p.bus().isEmpty()).mapToDouble(p -> p.cost() * Math.pow(1 + inflation, -p.year())).sum();
        assertEquals(-yard, figure(bridge, bridge.rows().get(3), "Capital").doubleValue(), 0.5);
    }

    private static double bridgeRounding() {
        return 1.5 + 0.5 * ProjectMoney.of(in).lines().size();
    }

    @Test
    void purchasesAndAwardsAreThoseOfTheResultsToThePrintedUnit() {
        for (ProjectMoney.Line line : ProjectMoney.of(in).lines()) {
            assertEquals(line.funded().purchase().cost(), line.cost().doubleValue(), 0.505);
            assertEquals(line.cost(), line.shares().stream().map(ProjectMoney.Share::amount).reduce(BigDecimal.ZERO,
                    BigDecimal::add));
            for (int i = 0; i < line.funded().awards().size(); i++) {
                assertEquals(line.funded().awards().get(i).paid(), line.shares().get(i).amount().doubleValue(), 1);
            }
        }
    }

    @Test
    void nothingIsAskedForAboveAnAward() {
        for (ProjectMoney.Line line : ProjectMoney.of(in).lines()) {
            BigDecimal programmes = BigDecimal.ZERO;
            for (int i = 0; i < line.funded().awards().size(); i++) {
                BigDecimal printed = line.shares().get(i).amount();
                assertTrue(printed.doubleValue() <= line.funded().awards().get(i).paid() + 0.005, line.funded().purchase().name());
                programmes = programmes.add(printed);
            }
            assertEquals(line.cost().subtract(programmes), line.own());
        }
        ProjectMoney money = ProjectMoney.of(in);
        assertTrue(money.paidBy("Clean Fleet Fund").doubleValue() <= money.unrounded(ProjectMoney.Column.REQUESTED));
    }

    @Test
    void wholeUnitsFollowFromThePrintedCents() {
        DataTable works = table(GrantTable.T3, 0);
        for (DataTable.Row row : works.rows().stream().filter(r -> r.kind() == DataTable.Kind.LINE).toList()) {
            if (figure(works, row, "Quantity").intValue() == 1) {
                assertEquals(figure(works, row, "Unit cost").setScale(0, RoundingMode.HALF_UP), figure(works, row, "Total"));
            }
        }
        assertTrue(works.rows().stream().anyMatch(r -> works.printed(r, ExamplePapers.column(works, "Unit cost")).equals("14,862.50")));
    }

    private static BigDecimal tons(ToDoubleFunction<ReplacedBus> kg, int decimals) {
        return PrintRounding.rounded(in.replaced().stream().mapToDouble(kg).sum() / GrantTerms.KG_PER_SHORT_TON, decimals);
    }

    @Test
    void emissionsAreThoseOfTheResultsToThePrintedDigit() {
        DataTable annual = table(GrantTable.T6, 0);
        assertEquals(tons(b -> b.before().exhaust().kg(Pollutant.NOX), 3), total(annual, "NOx before"));
        assertEquals(tons(b -> b.before().exhaust().kg(Pollutant.CO2), 1), total(annual, "CO2 before"));
        for (int row = 0; row < in.replaced().size(); row++) {
            boolean old = in.replaced().get(row).instead().isEmpty();
            String compared = annual.rows().get(row).cells().get(ExamplePapers.column(annual, "Compared with")).toString();
            assertEquals(old, compared.startsWith("the old bus, engine of "), compared);
            assertEquals(!old, compared.startsWith("new Diesel ") || compared.startsWith("new Gasoline "), compared);
        }
        DataTable life = table(GrantTable.T7, 0);
        assertEquals(tons(b -> b.lifetimeExhaust().kg(Pollutant.PM25), 4), total(life, "PM2.5"));
        assertEquals(tons(b -> b.lifetimeExhaust().kg(Pollutant.CO), 3), total(life, "CO"));
        assertEquals(PlaceholderUse.WORDS, annual.mark());
        assertEquals(PlaceholderUse.WORDS, GrantSet.of(in).mark());
    }

    @Test
    void tonsHaveTheDecimalsOfTheirPollutant() {
        Map<String, Integer> decimals = Map.of("NOx", 3, "PM2.5", 4, "HC", 3, "CO", 3, "CO2", 1, "CO2e", 1);
        DataTable annual = table(GrantTable.T6, 1);
        assertEquals(decimals.size(), annual.rows().size());
        for (DataTable.Row row : annual.rows()) {
            for (int i = 1; i <= 3; i++) {
                assertEquals(decimals.get(row.cells().get(0)), ((BigDecimal) row.cells().get(i)).scale());
            }
        }
        DataTable perTon = table(GrantTable.T8, 0);
        for (DataTable.Row row : perTon.rows()) {
            String pollutant = row.cells().get(0).toString().replaceAll(",.*", "");
            assertEquals(decimals.getOrDefault(pollutant, 3), ((BigDecimal) row.cells().get(ExamplePapers.column(perTon, "Reduced"))).scale());
        }
    }

    @Test
    void gasesOfBusesAndPowerPlantsAddUpAcrossAndDown() {
        DataTable years = table(GrantTable.T6, 2);
        for (DataTable.Row row : years.rows()) {
            assertEquals(figure(years, row, "Together"), figure(years, row, "Buses").add(figure(years, row, "Power plants")));
        }
        double kg = ResultLine.of(in, "emissions_by_year").stream().filter(l -> l.text("pollutant").equals("CO2e"))
                .mapToDouble(l -> l.number("total").orElseThrow()).sum();
        assertEquals(kg, total(years, "Together").doubleValue(), 1);
    }

    private static BigDecimal figure(DataTable table, DataTable.Row row, String heading) {
        return (BigDecimal) row.cells().get(ExamplePapers.column(table, heading));
    }

    @Test
    void greenhouseGasesOfEachBusAreThoseOfTheResults() {
        DataTable gases = table(GrantTable.T6, 3);
        assertEquals(tons(b -> b.reducedExhaust().kg(Pollutant.CO2E), 1), total(gases, "CO2e reduced"));
        assertEquals(tons(b -> b.lifetimeExhaust().kg(Pollutant.CO2E), 1), total(gases, "reduced over remaining life"));
        assertEquals(total(gases, "reduced over remaining life"), total(table(GrantTable.T7, 0), "CO2e"));
        assertTrue(total(gases, "CO2e reduced").signum() > 0);
    }

    /** By the table and its footnote alone: the price of the study at the base date, its rise and inflation make the price printed. */
    @Test
    void unitPricesFollowFromTheirFootnote() {
        DataTable deliveries = table(GrantTable.T2, 1);
        DataTable.Row first = deliveries.rows().get(0);
        assertTrue(deliveries.notes().stream().anyMatch(n -> n.contains(ProjectMoney.PRICES)), deliveries.notes().toString());
        assertEquals("Electric C 150", deliveries.printed(first, ExamplePapers.column(deliveries, "Type")));
        assertEquals(338_000 * 0.99 * 1.025, ((BigDecimal) first.cells().get(ExamplePapers.column(deliveries, "Unit price"))).doubleValue(),
                0.005);
    }

    /** By the table and its footnote alone: who is trained follows from the hours. */
    @Test
    void peopleTrainedForHighVoltageFollowFromTheirFootnote() {
        DataTable shop = table(GrantTable.T14, 0);
        assertTrue(shop.notes().stream().anyMatch(n -> n.contains(" over the 400 h a year of one person, rounded up")), shop.notes().toString());
        for (DataTable.Row row : shop.rows().stream().filter(r -> r.kind() == DataTable.Kind.LINE).toList()) {
            double hours = figure(shop, row, "High-voltage technicians").doubleValue();
            double people = hours > 0 ? Math.max(2, Math.ceil(hours / 400)) : 0;
            assertEquals(people, figure(shop, row, "People trained for high voltage, at least").doubleValue());
        }
    }

    @Test
    void aBusHasItsLineItsEngineAndItsMiles() {
        ReplacedBus first = in.replaced().get(0);
        DataTable identity = table(GrantTable.T1, 0);
        DataTable use = table(GrantTable.T1, 1);
        assertEquals("1", identity.printed(identity.rows().get(0), 0));
        assertEquals(first.old().vehicle().unit(), identity.printed(identity.rows().get(0), ExamplePapers.column(identity, "Bus no.")));
        assertEquals("2007", identity.printed(identity.rows().get(0), ExamplePapers.column(identity, "Engine model year")));
        assertEquals(Unit.KILOMETRE.show(in.replaced().stream().mapToDouble(b -> b.old().use().km()).sum(), in.system()),
                total(use, "Distance a year").doubleValue(), 0.5);
        assertEquals("scrap", use.printed(use.rows().get(0), ExamplePapers.column(use, "Disposal")));
    }

    @Test
    void whatTheStudyDoesNotHoldIsLeftToTheApplicant() {
        DataTable identity = table(GrantTable.T1, 0);
        int make = ExamplePapers.column(identity, "Make and model");
        assertTrue(identity.columns().get(make).heading().endsWith("†"));
        assertTrue(identity.rows().stream().allMatch(r -> identity.printed(r, make).isEmpty()));
        assertTrue(identity.notes().contains(DataTable.TO_FILL));
    }

    /** What is told of a bus is printed; of one bus it is not told, of all it is for the applicant to fill in. */
    @Test
    void whatIsToldOfOldBusesIsPrinted() {
        Study study = EXAMPLE.study();
        Bus first = study.getBuses().stream().filter(b -> b.getName().equals("B01")).findFirst().orElseThrow();
        first.setOwnership(Ownership.LEASED);
        first.setSeats(null);
        study.getBuses().forEach(b -> b.setDaysPerWeek(null));
        List<DataTable> tables = GrantTable.T1.of(EXAMPLE.in(study, ExamplePapers.tables(GrantTable.T1)));
        assertEquals(List.of("29,300 lb, class 7", "leased", "no", "not told", "D07-4137, invented D07"), Stream.of("GVWR, class", "Owner",
                "Lien (yes, no)", "Seats", "Engine serial and family").map(c -> cell(tables.get(0), c)).toList());
        assertEquals("5", cell(GrantTable.T1.of(in).get(1), "Days a week"));
        DataTable use = tables.get(1);
        assertTrue(use.columns().get(ExamplePapers.column(use, "Days a week")).heading().endsWith("†"));
    }

    private static String cell(DataTable of, String column) {
        return of.rows().stream().filter(r -> r.cells().get(1).equals("B01")).map(r -> of.printed(r, ExamplePapers.column(of, column))).findFirst()
                .orElseThrow();
    }

    @Test
    void vehicleNumbersAreMaskedInThePublicCopy() {
        Study study = EXAMPLE.study();
        Bus old = study.getBuses().stream().filter(b -> b.getName().equals("B01")).findFirst().orElseThrow();
        old.setVin("1ABCDEFGH2J345678");
        PaperInput open = EXAMPLE.in(study, ExamplePapers.tables(GrantTable.T1));
        PaperChoices whole = new PaperChoices(List.of(GrantTable.T1), Optional.empty(), true, Optional.empty());
        assertEquals("…345678", vin(open));
        assertEquals("1ABCDEFGH2J345678", vin(new PaperInput(open.result(), open.planIndex(), open.facts(), whole)));
        assertFalse(open.facts().version().equals(in.facts().version()), "another study has another version");
    }

    private static String vin(PaperInput of) {
        DataTable identity = GrantTable.T1.of(of).get(0);
        return identity.printed(identity.rows().get(0), ExamplePapers.column(identity, "VIN"));
    }

    @Test
    void tablesAreChosenAndOrdered() {
        Document document = GrantSet.of(new PaperInput(in.result(), in.planIndex(), in.facts(), ExamplePapers.tables(GrantTable.T7,
                GrantTable.T4)));
        assertEquals(List.of("N1", "T7", "T4a", "T4b"), document.tables().stream().map(DataTable::name).toList());
    }

    @Test
    void theProgrammeAppliedToHasAColumnOfItsOwn() {
        PaperChoices choices = new PaperChoices(List.of(GrantTable.T4), Optional.of("Make-ready"), false, Optional.empty());
        DataTable budget = GrantTable.T4.of(new PaperInput(in.result(), in.planIndex(), in.facts(), choices)).get(0);
        assertEquals(ProjectMoney.of(in).paidBy("Make-ready"), total(budget, "Requested: Make-ready"));
        assertEquals(BigDecimal.ZERO, total(budget, "Utility").setScale(0));
        assertEquals(ProjectMoney.of(in).paidBy("Clean Fleet Fund"), total(budget, "Other state"));
    }
}
