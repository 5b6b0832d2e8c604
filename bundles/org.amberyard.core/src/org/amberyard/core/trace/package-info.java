/** Measured drives and published schedules as the speed shape of a run: from raw points to a clean speed trace. */
package org.amberyard.core.trace;
