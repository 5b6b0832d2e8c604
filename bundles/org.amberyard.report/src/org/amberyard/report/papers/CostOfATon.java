package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.money.CostEffectiveness;
import org.amberyard.core.plan.ProjectCost;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.plan.ReplacedBuses;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/**
 * What a ton less costs: by all of the project, by what all programmes pay of it, and by the grant that is applied for alone. A
 * cost has no more digits than the printed tons that it is divided by.
 */
final class CostOfATon {
    /** What stands in place of a cost whose tons say next to nothing. */
    static final String NOT_MEANINGFUL = "not meaningful";
    private static final List<Pollutant> IN_LIFE = List.of(Pollutant.NOX, Pollutant.PM25, Pollutant.CO2);
    /** Decimals of weighted sums, in which nitrogen oxides are counted once. */
    private static final CellFormat WEIGHTED = CellFormat.decimals(3);
    private static final CellFormat FINEST = CellFormat.decimals(4);
    private static final int DIGITS = 3;
    private static final int LEAST_DIGITS = 2;
    private static final String ROUNDING = "The cost of a ton has three significant digits (" + SourceWords.ASSUMED + "), fewer where the "
            + "printed tons have fewer; where these have less than two, or nothing is reduced, it is not meaningful.";

    private final PaperInput in;
    private final List<ReplacedBus> buses;
    private final Map<Pollutant, CellFormat> formats;

    /** Money that is set against tons. */
    private record Basis(String name, double cost) {
    }

    /** A cost of a ton. */
    private record Row(String measure, Basis basis, double tons, CellFormat format, double perTon, String formula) {
    }

    private CostOfATon(PaperInput in, Map<Pollutant, CellFormat> formats) {
        this.in = in;
        this.buses = in.replaced();
        this.formats = formats;
    }

    /**
     * @param formats how tons of a pollutant are printed
     * @param mark what the table must say on placeholders
     */
    static DataTable of(PaperInput in, Map<Pollutant, CellFormat> formats, String mark) {
        return new CostOfATon(in, formats).table(mark);
    }

    private DataTable table(String mark) {
        List<Row> rows = new ArrayList<>();
        bases().forEach(b -> addRows(rows, b));
        return new TableBuilder<Row>("T8a", "T8a. What a ton less costs").text("Measure", 2, Row::measure)
                .text("Money", 1.6, r -> r.basis().name()).number("Cost", in.currency(), CellFormat.MONEY, r -> r.basis().cost())
                .mixed("Reduced", "short tons", FINEST, Row::format, r -> OptionalDouble.of(r.tons()))
                .value("Cost of a short ton (" + in.currency() + ")", 1.4, CostOfATon::cost)
                .text("Formula", 4, Row::formula)
                .note("“Capital”: all of the project; “all programmes”: what programmes pay of it. " + ProjectBridge.MONEY)
                .note(ProjectMoney.of(in).payingProgramme().map(p -> "“Grant only”: what is requested of “" + p
                        + "” in T4 and T5, in money of the years of purchase as there.").orElse("No grant is applied for."))
                .note("Tons over remaining life are those of " + buses.stream().filter(b -> b.remainingYears() > 0).count() + " of "
                        + buses.size() + " buses, whose old bus would have driven on; the cost is that of all. " + ROUNDING)
                .mark(mark).of(rows);
    }

    private List<Basis> bases() {
        ProjectCost cost = ProjectCost.of(in.result(), in.plan(), buses);
        ProjectMoney money = ProjectMoney.of(in);
        List<Basis> bases = new ArrayList<>(List.of(new Basis("capital", cost.capital()), new Basis("all programmes", cost.grant())));
        money.payingProgramme().ifPresent(p -> bases.add(new Basis("grant only", money.paidBy(p).doubleValue())));
        return bases;
    }

    private void addRows(List<Row> rows, Basis basis) {
        Masses life = ReplacedBuses.reducedInLife(buses);
        for (Pollutant pollutant : IN_LIFE) {
            double kg = life.kg(pollutant);
            rows.add(new Row(pollutant.label() + ", remaining life", basis, kg / GrantTerms.KG_PER_SHORT_TON, formats.get(pollutant),
                    GrantTerms.perShortTon(basis.cost(), kg), "cost ÷ short tons reduced in the remaining life of the old buses"));
        }
        GrantTerms terms = in.study().air().grants();
        Masses year = ReplacedBuses.reducedPerYear(buses);
        Optional<CostEffectiveness> recovered = terms.recovered(basis.cost(), year);
        rows.add(new Row("weighted, capital recovery", basis, terms.weightedKg(year) / GrantTerms.KG_PER_SHORT_TON, WEIGHTED,
                recovered.map(CostEffectiveness::costPerUnit).orElse(Double.NaN),
                CostEffectiveness.FORMULA
                        + recovered.map(r -> ": " + plain(r.recoveryFactor()) + " at " + ProgrammeTerms.percent(terms.rate()) + " over " + plain(terms.years())
                                + " years").orElse("")
                        + "; yearly reduction = " + plain(terms.noxWeight()) + " NOx + " + plain(terms.hcWeight())
                        + " HC + " + plain(terms.pmWeight()) + " PM2.5"));
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).round(new MathContext(DIGITS + 1, RoundingMode.HALF_UP)).stripTrailingZeros().toPlainString();
    }

    private static Object cost(Row row) {
        return printed(row.perTon(), Double.isFinite(row.tons()) ? row.format().rounded(row.tons()) : BigDecimal.ZERO);
    }

    /** A cost of a ton with as many digits as the printed tons bear, or words where these bear none. */
    static Object printed(double perTon, BigDecimal tons) {
        int digits = tons.signum() > 0 ? Math.min(DIGITS, tons.precision()) : 0;
        return digits < LEAST_DIGITS || !Double.isFinite(perTon) ? NOT_MEANINGFUL
                : BigDecimal.valueOf(perTon).round(new MathContext(digits, RoundingMode.HALF_UP)).setScale(0, RoundingMode.HALF_UP);
    }
}
