package org.amberyard.core.funding;

/**
 * Money that an award becomes.
 *
 * @param line place of the line in the award ledger
 * @param programme place of the programme
 * @param year year of the study at whose start it is received; may lie after the study
 * @param amount money of that year
 */
public record Payment(int line, int programme, int year, double amount) {
}
