/** Narratives: texts for applications with figures of the results, written beside what they will read. */
package org.amberyard.workbench.narrative;
