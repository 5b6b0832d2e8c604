/** Routes and runs from transit schedules in the General Transit Feed Specification (GTFS). */
package org.amberyard.exchange.gtfs;
