/** Charging at the yard: who stands at which port when, policies of charging, and the schedule of least cost. */
package org.amberyard.core.charging;
