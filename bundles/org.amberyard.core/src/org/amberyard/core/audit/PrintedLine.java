package org.amberyard.core.audit;

/**
 * A line of a bill as printed.
 *
 * @param name what is charged, in the words of the bill
 * @param amount money; below zero for a credit
 */
public record PrintedLine(String name, double amount) {
}
