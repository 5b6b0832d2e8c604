/** Energy from measurements: the consumption curve, its fit to logs, and the calibration of a model by what was measured. */
package org.amberyard.core.consumption;
