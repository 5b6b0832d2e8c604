/** A workbook of the cash flow with formulas: it computes present costs and paybacks anew when rates or prices are changed. */
package org.amberyard.report.cashflow;
