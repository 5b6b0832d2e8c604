/** What the documents say: each class fills one document or a group of its tables from the results of a study. */
package org.amberyard.report.papers;
