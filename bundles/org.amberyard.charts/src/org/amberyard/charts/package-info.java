/** Charts of results, independent of the toolkit that shows them. */
package org.amberyard.charts;
