/** The page that a window shows as long as no study is open: the ways to one. */
package org.amberyard.workbench.welcome;
