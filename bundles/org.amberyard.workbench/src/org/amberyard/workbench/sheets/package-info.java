/** Tables of any shape into the open study: which column holds what, what would change, what keeps it out. */
package org.amberyard.workbench.sheets;
