/** Climate of a site from hourly weather files (EPW) and tables of monthly normals. */
package org.amberyard.exchange.weather;
