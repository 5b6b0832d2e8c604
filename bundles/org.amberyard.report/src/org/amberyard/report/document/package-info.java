/**
 * Documents that leave the program: what a document says is made once, as {@link org.amberyard.report.document.Document}; a
 * writer for each format turns it into a file, the same bytes for the same document.
 */
package org.amberyard.report.document;
