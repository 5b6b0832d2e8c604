/** The documents and tables that leave the building. */
package org.amberyard.report;
