/**
 * Spreadsheets and delimited text of all shapes into a study: read as sheets, columns recognised by name and content, every
 * problem told by row and column, all or nothing.
 */
package org.amberyard.exchange.sheet;
