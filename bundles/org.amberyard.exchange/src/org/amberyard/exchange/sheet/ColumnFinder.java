package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.amberyard.core.units.UnitSystem;

/**
 * Recognises the columns of a sheet: by their headers, and those whose header says nothing by what stands in them. The row of
 * headers is the one among the first in which most columns are recognised, so that titles above it do no harm.
 */
final class ColumnFinder {
    private static final int LOOKED_AT = 200;
    private static final double MOST_OF_THEM = 0.8;
    private static final int EXACT = 1000;
    private static final int PER_WORD = 20;
    private static final int MOST_OTHERS = 2;

    private final Sheet sheet;
    private final List<SheetColumn> columns;
    private final List<Sought> sought;
    private final UnitSystem usual;
    private final String currency;

    /**
     * @param usual unit system of numbers whose header names none
     */
    ColumnFinder(Sheet sheet, List<SheetColumn> columns, UnitSystem usual, String currency) {
        this.sheet = sheet;
        this.columns = columns;
        this.sought = columns.stream().map(c -> Sought.of(c, currency)).toList();
        this.usual = usual;
        this.currency = currency;
    }

    /** A guess at the columns, and how sure it is. */
    record Found(SheetMapping mapping, int score) {
        private static final int FEWEST = 2;

        /**
         * True when enough columns are known to take the sheet for one of the kind; a word or two stand in many tables.
         *
         * @param missing number of required columns that are not among them
         */
        boolean tells(int missing) {
            return mapping.columns().size() >= FEWEST + Math.min(1, missing);
        }
    }

    /**
     * A column and what it goes by.
     *
     * @param headers its headers as a file that came from a study has them, with their units
     * @param names its names
     * @param unitWords words that name its unit
     */
    private record Sought(SheetColumn column, List<HeaderWords> headers, List<HeaderWords> names, List<HeaderWords> vague, List<String> unitWords) {
        static Sought of(SheetColumn column, String currency) {
            return new Sought(column, Stream.of(UnitSystem.values()).map(s -> HeaderWords.of(column.header(s, currency))).toList(),
                    column.names().toList(), column.vague().names().stream().map(HeaderWords::of).toList(), new UnitWords(column.unit(), currency).all());
        }
    }

    private record Match(int place, SheetColumn column, int score) {
    }

    Found find() {
        Found best = new Found(new SheetMapping(sheet.rows().get(0).number(), Map.of()), 0);
        for (SheetRow row : sheet.rows().subList(0, Math.min(SheetImport.SEARCHED_ROWS, sheet.rows().size()))) {
            Found found = in(row);
            best = found.score() > best.score() ? found : best;
        }
        return best;
    }

    /** The columns when the headers stand in a row. */
    Found in(SheetRow headers) {
        Map<Integer, SheetMapping.Use> uses = new HashMap<>();
        Set<String> taken = new HashSet<>();
        int score = 0;
        for (Match match : matches(headers)) {
            if (!uses.containsKey(match.place()) && taken.add(match.column().id())) {
                uses.put(match.place(), use(match.column(), headers.cell(match.place()).text()));
                score += match.score();
            }
        }
        byContent(headers, uses, taken);
        return new Found(new SheetMapping(headers.number(), uses), score);
    }

    private SheetMapping.Use use(SheetColumn column, String header) {
        return new SheetMapping.Use(column.id(), new UnitWords(column.unit(), currency).named(header).orElse(usual));
    }

    /** All matches of headers and columns, the surest first. */
    private List<Match> matches(SheetRow headers) {
        List<Match> matches = new ArrayList<>();
        for (int place = 0; place < headers.cells().size(); place++) {
            SheetCell header = headers.cell(place);
            HeaderWords words = HeaderWords.of(header.text());
            for (Sought each : header.kind() == SheetCell.Kind.TEXT ? sought : List.<Sought>of()) {
                int score = score(each, words, place, headers.number());
                if (score > 0 && !isAnother(each.column(), place, headers.number())) {
                    matches.add(new Match(place, each.column(), score));
                }
            }
        }
        matches.sort(Comparator.comparingInt((Match m) -> -m.score()).thenComparingInt(Match::place));
        return matches;
    }

    /** True where the cells give away that they hold something else than the header says. */
    private boolean isAnother(SheetColumn column, int place, int headerRow) {
        return columns.stream().anyMatch(c -> c != column && looksLike(c.looksLike(), place, headerRow));
    }

    private int score(Sought column, HeaderWords words, int place, int headerRow) {
        int score = score(column, words);
        boolean vaguely = score == 0 && column.vague().contains(words) && looksLike(column.column().vague().cell(), place, headerRow);
        return vaguely ? EXACT + words.words().size() : score;
    }

    /** The same words, as a file that came from a study has them with their unit, else all words of a name among others, which count the less the more others there are. */
    private static int score(Sought column, HeaderWords whole) {
        if (column.headers().contains(whole)) {
            return EXACT + whole.words().size();
        }
        HeaderWords words = whole.without(column.unitWords());
        return column.names().stream().mapToInt(name -> {
            if (name.equals(words) || name.equals(whole)) {
                return EXACT + name.words().size();
            }
            int others = words.words().size() - name.words().size();
            return words.holds(name) && others > 0 && others <= MOST_OTHERS ? Math.max(1, PER_WORD * name.words().size() - others) : 0;
        }).max().orElse(0);
    }

    private void byContent(SheetRow headers, Map<Integer, SheetMapping.Use> uses, Set<String> taken) {
        for (int place = 0; place < sheet.width(); place++) {
            for (SheetColumn column : columns) {
                if (!uses.containsKey(place) && !taken.contains(column.id()) && looksLike(column.looksLike(), place, headers.number())) {
                    uses.put(place, use(column, headers.cell(place).text()));
                    taken.add(column.id());
                }
            }
        }
    }

    private boolean looksLike(Predicate<String> own, int place, int headerRow) {
        List<SheetCell> cells = sheet.column(place, headerRow).limit(LOOKED_AT).toList();
        long alike = cells.stream().filter(c -> own.test(c.text())).count();
        return !cells.isEmpty() && alike >= MOST_OF_THEM * cells.size();
    }
}
