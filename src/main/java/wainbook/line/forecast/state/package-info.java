/** The line as it stands, read from records that end now or ended then. */
package wainbook.line.forecast.state;
