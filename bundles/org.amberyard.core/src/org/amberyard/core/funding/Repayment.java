package org.amberyard.core.funding;

/**
 * A part of an award that is paid back, because the bus leaves service before its time.
 *
 * @param line place of the line in the award ledger
 * @param programme place of the programme
 * @param year year of the study at whose start it is paid back
 * @param servedYears years that the bus was in service
 * @param amount money of the year of the award
 */
public record Repayment(int line, int programme, int year, int servedYears, double amount) {
}
