/** What driving takes: road load, driveline, cabin, fuel, and whether a bus can do its day's block. */
package org.amberyard.core.duty;
