package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.funding.Payment;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;

/** What the rows of the tables of funding are made from. */
final class FundingRows {
    private FundingRows() {
    }

    /**
     * What one source pays for a line; the last of each line is own money.
     *
     * @param line place of the line in the award ledger
     * @param order place in the order of application, from 0; that of own money comes after all programmes
     */
    record OfSource(StudyResult result, PlanResult plan, int line, int order) {
        FundedLine funded() {
            return plan.funding().awards().lines().get(line);
        }

        Optional<Award> award() {
            return order < funded().awards().size() ? Optional.of(funded().awards().get(order)) : Optional.empty();
        }

        Optional<Programme> programme() {
            return award().map(a -> result.input().funding().programmes().get(a.programme()));
        }

        double amount() {
            return award().map(Award::paid).orElseGet(funded()::own);
        }

        OptionalDouble asked() {
            return award().map(a -> OptionalDouble.of(a.asked().value())).orElse(OptionalDouble.empty());
        }

        /** The limit that bit as a clause, with its amount where it is not that nothing is paid at all. */
        String limitWords() {
            return award().flatMap(Award::bite).map(b -> b.limit().refuses() ? b.words() : b.words()
                    + String.format(Locale.ROOT, ": %s %,.0f", result.input().currency(), b.amount().value())).orElse(null);
        }

        /** Cost that is left after this source. */
        double left() {
            double paid = IntStream.range(0, order).mapToDouble(i -> funded().awards().get(i).paid()).sum() + amount();
            return Math.max(0, funded().purchase().cost() - paid);
        }

        /** Years in which it is paid; empty where nothing is. */
        String paidIn() {
            int[] years = plan.funding().payments().stream().filter(p -> p.line() == line
                    && award().filter(a -> a.programme() == p.programme()).isPresent()).mapToInt(Payment::year).toArray();
            if (years.length == 0) {
                return null;
            }
            int first = result.input().baseYear() + years[0];
            int last = result.input().baseYear() + years[years.length - 1];
            return first == last ? String.valueOf(first) : first + "–" + last;
        }

        static List<OfSource> all(StudyResult result) {
            List<OfSource> rows = new ArrayList<>();
            for (PlanResult plan : result.plans()) {
                List<FundedLine> lines = plan.funding().awards().lines();
                for (int line = 0; line < lines.size(); line++) {
                    for (int order = 0; order <= lines.get(line).awards().size(); order++) {
                        rows.add(new OfSource(result, plan, line, order));
                    }
                }
            }
            return rows;
        }
    }

    /** What one source brings or takes back in a year, which may lie after the study. */
    record OfYear(StudyResult result, PlanResult plan, FundingFlow.Kind kind, String source, int year) {
        List<FundingFlow> flows() {
            return plan.funding().flows().stream().filter(f -> f.kind() == kind && f.source().equals(source) && f.year() == year)
                    .toList();
        }

        double amount() {
            return flows().stream().mapToDouble(FundingFlow::amount).sum();
        }

        double stated() {
            return flows().stream().mapToDouble(plan.costs()::stated).sum();
        }

        static List<OfYear> all(StudyResult result) {
            return result.plans().stream().flatMap(plan -> plan.funding().flows().stream()
                    .map(f -> new OfYear(result, plan, f.kind(), f.source(), f.year())).distinct()
                    .sorted((a, b) -> Integer.compare(a.year(), b.year()))).toList();
        }
    }
}
