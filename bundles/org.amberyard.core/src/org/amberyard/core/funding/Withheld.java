package org.amberyard.core.funding;

/**
 * A part of an award that is not paid any more, because the bus leaves service before it would have come.
 *
 * @param line place of the line in the award ledger
 * @param programme place of the programme
 * @param year year of the study at whose start the bus leaves
 * @param amount money of the year of the award
 */
public record Withheld(int line, int programme, int year, double amount) {
}
