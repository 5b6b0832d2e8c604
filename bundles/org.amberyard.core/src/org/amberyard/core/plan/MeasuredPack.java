package org.amberyard.core.plan;

/**
 * A measured state of health, from which a pack's fade goes on.
 *
 * @param year year at whose start it was measured, counted from the base year; not after it
 * @param health present over nominal capacity
 */
public record MeasuredPack(int year, double health) {
}
