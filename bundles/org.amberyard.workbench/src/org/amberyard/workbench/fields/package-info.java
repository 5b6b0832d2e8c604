/** Fields of the study as cells: headers, texts, entries, marks and the commands behind them. */
package org.amberyard.workbench.fields;
