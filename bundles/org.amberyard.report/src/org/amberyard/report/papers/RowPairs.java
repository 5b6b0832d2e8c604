package org.amberyard.report.papers;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;

/** Which row of a table was which one before, and which have moved among the others. */
final class RowPairs {
    private static final int NONE = -1;

    private final int[] nowOf;
    private final int[] beforeOf;

    private RowPairs(int before, int now) {
        nowOf = new int[before];
        beforeOf = new int[now];
        Arrays.fill(nowOf, NONE);
        Arrays.fill(beforeOf, NONE);
    }

    /**
     * Pairs rows of the same name; of those that share one, first the ones that are alike in every cell, then in their order.
     *
     * @param cellsBefore whole rows as they were
     * @param cellsNow whole rows as they are
     */
    static RowPairs of(RowNames.Both names, List<List<String>> cellsBefore, List<List<String>> cellsNow) {
        RowPairs pairs = new RowPairs(cellsBefore.size(), cellsNow.size());
        pairs.pair(cellsBefore, cellsNow);
        pairs.pair(names.before().keys(), names.now().keys());
        return pairs;
    }

    private void pair(List<List<String>> before, List<List<String>> now) {
        Map<List<String>, Queue<Integer>> waiting = new HashMap<>();
        for (int i = 0; i < before.size(); i++) {
            if (isGone(i)) {
                waiting.computeIfAbsent(before.get(i), k -> new ArrayDeque<>()).add(i);
            }
        }
        for (int i = 0; i < now.size(); i++) {
            Queue<Integer> same = waiting.get(now.get(i));
            if (isNew(i) && same != null && !same.isEmpty()) {
                int was = same.remove();
                nowOf[was] = i;
                beforeOf[i] = was;
            }
        }
    }

    /** True when a row of the table as it was is no more. */
    boolean isGone(int before) {
        return nowOf[before] == NONE;
    }

    /** True when a row of the table as it is was not there. */
    boolean isNew(int now) {
        return beforeOf[now] == NONE;
    }

    /** Where a row of the table as it is was. */
    int before(int now) {
        return beforeOf[now];
    }

    /** Rows of the table as it is that stand elsewhere among the others: all but the most that kept their order. */
    Set<Integer> moved() {
        int[] lastOfLength = new int[beforeOf.length];
        int[] previous = new int[beforeOf.length];
        int longest = 0;
        Set<Integer> moved = new HashSet<>();
        for (int i = 0; i < beforeOf.length; i++) {
            if (!isNew(i)) {
                int length = longer(lastOfLength, longest, beforeOf[i]);
                previous[i] = length == 0 ? NONE : lastOfLength[length - 1];
                lastOfLength[length] = i;
                longest = Math.max(longest, length + 1);
                moved.add(i);
            }
        }
        for (int i = longest == 0 ? NONE : lastOfLength[longest - 1]; i != NONE; i = previous[i]) {
            moved.remove(i);
        }
        return moved;
    }

    /** How many rows of an ascending run can stand before a row that was at a place. */
    private int longer(int[] lastOfLength, int longest, int place) {
        int low = 0;
        int high = longest;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (beforeOf[lastOfLength[middle]] < place) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
