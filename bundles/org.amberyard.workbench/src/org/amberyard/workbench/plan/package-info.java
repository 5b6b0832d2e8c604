/** Plans as a table of buses and years that can be painted, and what is done with a plan as a whole. */
package org.amberyard.workbench.plan;
