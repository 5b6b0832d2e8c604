/** Reading and writing study files, older versions included. */
package org.amberyard.model.io;
