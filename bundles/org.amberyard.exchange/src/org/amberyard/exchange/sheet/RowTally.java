package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What has become of the rows of a sheet below its headers: each is taken in, left out for a reason, or rejected with a problem. None goes
 * missing.
 *
 * @param read rows in which something stands
 * @param rejected rows with problems
 * @param leftOut rows that are left out, in order
 */
public record RowTally(int read, int rejected, List<LeftOut> leftOut) {
    private static final int MOST_NAMED = 5;

    /**
     * A row that is left out.
     *
     * @param row its number in the file
     * @param why why, in some words
     */
    public record LeftOut(int row, String why) {
    }

    public RowTally {
        leftOut = List.copyOf(leftOut);
    }

    /** Rows of which the study holds what they say. */
    public int taken() {
        return read - rejected - leftOut.size();
    }

    /** Those of several sheets together. */
    static RowTally of(Collection<RowTally> parts) {
        List<LeftOut> all = new ArrayList<>();
        parts.forEach(p -> all.addAll(p.leftOut()));
        return new RowTally(parts.stream().mapToInt(RowTally::read).sum(), parts.stream().mapToInt(RowTally::rejected).sum(), all);
    }

    /** Numbers of the rows that are left out by why they are, the first of many. */
    public Map<String, String> reasons() {
        Map<String, List<Integer>> byWhy = new LinkedHashMap<>();
        leftOut.forEach(l -> byWhy.computeIfAbsent(l.why(), w -> new ArrayList<>()).add(l.row()));
        Map<String, String> reasons = new LinkedHashMap<>();
        byWhy.forEach((why, rows) -> reasons.put(why, Stream.concat(rows.stream().limit(MOST_NAMED).map(String::valueOf),
                rows.size() > MOST_NAMED ? Stream.of("…") : Stream.of()).collect(Collectors.joining(", "))));
        return reasons;
    }

    /** In a sentence: {@code Rows read: 24; taken in: 22; left out: 1 (a total: row 26); with problems: 1.} */
    public String words() {
        String why = reasons().entrySet().stream().map(e -> e.getKey() + ": row " + e.getValue()).collect(Collectors.joining("; "));
        return "Rows read: " + read + "; taken in: " + taken() + "; left out: " + leftOut.size() + (why.isEmpty() ? "" : " (" + why + ")")
                + "; with problems: " + rejected + ".";
    }
}
