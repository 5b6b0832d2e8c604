/** The help inside the program: how to do things, how figures are made, what every field means. */
package org.amberyard.workbench.help;
