package org.amberyard.report.papers;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.funding.AwardLedger;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.Limit;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Stacking;
import org.amberyard.report.document.CellFormat;

/**
 * What a reader must know of awards that are not certain: a plan counts them in full, or leaves them out.
 *
 * @param in what documents are made from
 * @param money the project as the plan counts it
 */
record AwardCertainty(PaperInput in, ProjectMoney money) {

    static AwardCertainty of(PaperInput in) {
        return new AwardCertainty(in, ProjectMoney.of(in));
    }

    /** How awards are counted, as sentences. */
    String words() {
        return caveat().orElse("All awards are counted as certain.");
    }

    /** The same; empty where all awards are certain. */
    Optional<String> caveat() {
        List<String> uncertain = money.uncertain();
        Optional<String> doubted = uncertain.isEmpty() ? leftOut() : Optional.of("Counted in full, though not certain: "
                + String.join("; ", uncertain) + ". Expected money is less.");
        return untold().map(u -> u + doubted.map(d -> " " + d).orElse("")).or(() -> doubted);
    }

    /** Programmes that are counted as certain though nobody has said how far their money is secured. */
    private Optional<String> untold() {
        List<String> names = money.programmes().stream().filter(p -> p.isCertain() && money.paidBy(p.name()).signum() > 0
                && in.facts().funding().ofProgramme(p.name()).status().isEmpty()).map(p -> "“" + p.name() + "”").toList();
        return names.isEmpty() ? Optional.empty() : Optional.of("The plan counts on " + String.join(" and ", names)
                + " as certain; " + (names.size() == 1 ? "its status is" : "their status is") + " not told.");
    }

    /** Names what the plan leaves out, and what it would pay. */
    Optional<String> leftOut() {
        List<Programme> programmes = leftOutProgrammes();
        if (programmes.isEmpty()) {
            return Optional.empty();
        }
        ProjectMoney all = counted(false);
        return Optional.of("The plan counts on certain awards only and leaves out: " + String.join("; ", programmes.stream()
                .map(p -> ProjectMoney.probable(p) + ", which would pay " + in.currency() + " " + CellFormat.MONEY.print(all.paidBy(p
                        .name())))
                .toList()) + ".");
    }

    /** Own money of the project where no award is made that is not certain; empty where the plan counts on none. */
    Optional<String> ownIfNotMade() {
        return money.uncertain().isEmpty() ? Optional.empty() : Optional.of("If none of these awards is made, own money is "
                + in.currency() + " " + CellFormat.MONEY.print(counted(true).own()) + " instead of " + in.currency() + " "
                + CellFormat.MONEY.print(money.own()) + ".");
    }

    private List<Programme> leftOutProgrammes() {
        return money.lines().stream().map(ProjectMoney.Line::funded).flatMap(l -> l.awards().stream())
                .filter(a -> a.bounds().stream().anyMatch(b -> b.limit() == Limit.UNCERTAIN))
                .map(a -> in.study().funding().programmes().get(a.programme())).distinct().toList();
    }

    /** The project with the awards that the same purchases have where uncertain ones are left out, or are not. */
    private ProjectMoney counted(boolean certainOnly) {
        AwardLedger awards = Stacking.of(in.study().funding(), in.plan().funding().awards().lines().stream().map(FundedLine::purchase)
                .toList(), certainOnly);
        return ProjectMoney.of(in, awards);
    }
}
