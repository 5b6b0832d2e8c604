package org.amberyard.charts;

/**
 * A part of the bars of a plan.
 *
 * @param <T> kind of the part
 * @param plan place of the plan
 * @param name name of the plan
 * @param part the part
 * @param label name of the part
 */
record PlanPart<T extends Enum<T>>(int plan, String name, T part, String label) implements Comparable<PlanPart<T>>, LegendKey {

    @Override
    public String legend() {
        return label;
    }

    @Override
    public int compareTo(PlanPart<T> other) {
        return plan != other.plan ? Integer.compare(plan, other.plan) : part.compareTo(other.part);
    }

    @Override
    public String toString() {
        return name + ", " + label;
    }
}
