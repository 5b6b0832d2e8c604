package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.report.Cautions;
import org.amberyard.report.Headline;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.Section;

/** The grant writer's set: the chosen tables in the chosen order, each number on pages of its own. */
final class GrantSet {
    private static final String TITLE = "Justification tables";
    private static final String ROUNDING = """
            unit prices to the cent; distance, fuel and hours whole; short tons of NOx, HC, CO and of weighted sums with three \
            decimals, of PM2.5 with four, of CO2 and CO2e with one; shares with one decimal. Every figure is computed unrounded \
            and rounded once. † marks what the applicant fills in.""";

    private GrantSet() {
    }

    static Document of(PaperInput in) {
        List<Section> sections = new ArrayList<>();
        sections.add(summary(in));
        sections.addAll(NarrativePaper.of(in));
        for (GrantTable table : in.choices().tables()) {
            sections.addAll(TurnedPages.of(table.name() + " " + table.title(), table.of(in).stream().map(GrantSet::onPaper).toList(),
                    b -> b instanceof Block.Condensed t && t.onPaper().get(0).isWide()));
        }
        sections.add(new Section("Cautions", false, false, List.of(new Block.Bullets(Cautions.SENTENCES))));
        return new Document("grant-tables", TITLE, in.study().name(), in.documentFacts(), in.running(TITLE), AirPapers.mark(in),
                sections);
    }

    /** A table of one wide line is easier to read as a list; of others only long words that rows repeat stand below. */
    private static Block.Condensed onPaper(DataTable table) {
        boolean oneWideLine = table.isWide() && table.rows().size() == 1 && table.columns().stream().noneMatch(DataTable.Column::toFill);
        return oneWideLine ? Block.Condensed.of(table) : Block.Condensed.cited(table);
    }

    private static Section summary(PaperInput in) {
        ProjectMoney money = ProjectMoney.of(in);
        List<String> points = new ArrayList<>();
        points.add(in.replaced().size() + " engine buses are replaced otherwise than in “" + in.result().baseline().name() + "”.");
        points.add("The project costs " + in.currency() + " " + CellFormat.MONEY.print(money.total())
                + " in money of the years of purchase; programmes pay "
                + CellFormat.MONEY.print(money.total().subtract(money.own())) + uncertain(in) + ", own money "
                + CellFormat.MONEY.print(money.own()) + ".");
        money.payingProgramme().ifPresent(p -> points.add("Applied to: “" + p + "” for " + in.currency() + " "
                + CellFormat.MONEY.print(money.paidBy(p)) + "."));
        AppliedProgramme.paysNothing(in).ifPresent(points::add);
        AwardCertainty.of(in).leftOut().ifPresent(points::add);
        points.addAll(EvidencePapers.energyWords(in));
        Headline.of(in.result(), in.system()).stream().filter(h -> h.plan() == in.planIndex()).forEach(h -> points.addAll(h.sentences()));
        points.add(in.moneyWords());
        return new Section("In short", false, false, List.of(new Block.Bullets(points), new Block.Paragraph("Rounding: money in "
                + "whole " + in.currency() + ", " + ROUNDING)));
    }

    /** Awards that nobody promises are counted as if they were paid; a reader must know. */
    private static String uncertain(PaperInput in) {
        List<String> names = ProjectMoney.of(in).uncertain();
        return names.isEmpty() ? "" : " if all awards are made that are not certain (" + String.join("; ", names) + ")";
    }
}
