package org.amberyard.core.funding;

/**
 * Two programmes that may not be combined on a line; the one that is applied first pays.
 *
 * @param one name of a programme
 * @param other name of another
 */
public record Exclusion(String one, String other) {

    /** True for these two, in either order. */
    boolean holds(String first, String second) {
        return one.equals(first) && other.equals(second) || one.equals(second) && other.equals(first);
    }
}
