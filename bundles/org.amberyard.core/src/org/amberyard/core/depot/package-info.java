/** The yard at night: chargers, service limits, charging schedules and the bill of the electricity supplier. */
package org.amberyard.core.depot;
