/** Imports of what a district already has: fleets, routes, trips, meter data, tariffs and prices. */
package org.amberyard.exchange;
