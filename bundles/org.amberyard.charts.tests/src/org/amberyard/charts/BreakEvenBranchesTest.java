package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.whatif.BreakEvenCurve;
import org.junit.jupiter.api.Test;

/** Lines drawn through the break-evens of one input at steps of another; invented. */
class BreakEvenBranchesTest {

    private static BreakEvenCurve point(double other, BreakEven.Stretch... stretches) {
        return new BreakEvenCurve(other, new BreakEven(List.of(stretches)));
    }

    /** The plan pays from some value on; at 3 it also stops to pay further up, and at 4 that is the only change left. */
    @Test
    void onlyChangesInTheSameDirectionAreJoined() {
        List<BreakEvenBranches.Branch> branches = BreakEvenBranches.of(List.of(
                point(1, new BreakEven.Stretch(0, 1, BreakEven.Cheaper.OTHER, false, 0), new BreakEven.Stretch(1, 4, BreakEven.Cheaper.PLAN, false, 0)),
                point(2, new BreakEven.Stretch(0, 2, BreakEven.Cheaper.OTHER, true, 0), new BreakEven.Stretch(2, 4, BreakEven.Cheaper.PLAN, false, 0)),
                point(3, new BreakEven.Stretch(0, 2.5, BreakEven.Cheaper.OTHER, false, 0),
                        new BreakEven.Stretch(2.5, 3, BreakEven.Cheaper.PLAN, false, 0), new BreakEven.Stretch(3, 4, BreakEven.Cheaper.OTHER, false, 0)),
                point(4, new BreakEven.Stretch(0, 3.5, BreakEven.Cheaper.PLAN, false, 0),
                        new BreakEven.Stretch(3.5, 4, BreakEven.Cheaper.OTHER, false, 0))));
        assertEquals(List.of(List.of(1.0, 2.0, 2.5), List.of(3.0, 3.5)), branches.stream()
                .map(b -> b.changes().stream().map(BreakEvenBranches.Change::value).toList()).toList());
        assertEquals(List.of(false, true, false), branches.get(0).changes().stream().map(BreakEvenBranches.Change::jumps).toList());
    }

    /** Where another change in the same direction comes up, nobody knows which of both goes on. */
    @Test
    void aBranchEndsWhereTheNumberOfChangesDiffers() {
        BreakEven.Stretch low = new BreakEven.Stretch(0, 1, BreakEven.Cheaper.OTHER, false, 0);
        BreakEven.Stretch pays = new BreakEven.Stretch(1, 2, BreakEven.Cheaper.PLAN, false, 0);
        BreakEven.Stretch not = new BreakEven.Stretch(2, 3, BreakEven.Cheaper.OTHER, false, 0);
        BreakEven.Stretch again = new BreakEven.Stretch(3, 4, BreakEven.Cheaper.PLAN, false, 0);
        assertEquals(List.of(List.of(1.0), List.of(1.0), List.of(3.0), List.of(2.0)), BreakEvenBranches.of(List.of(
                point(1, low, new BreakEven.Stretch(1, 4, BreakEven.Cheaper.PLAN, false, 0)), point(2, low, pays, not, again))).stream()
                .map(b -> b.changes().stream().map(BreakEvenBranches.Change::value).toList()).toList());
    }
}
