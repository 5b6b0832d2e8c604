/** What comes out of tailpipes and power stations: pollutants, greenhouse gases and their social cost. */
package org.amberyard.core.air;
