/** Work in the background that takes long enough to be told of and stopped. */
package org.amberyard.workbench.work;
