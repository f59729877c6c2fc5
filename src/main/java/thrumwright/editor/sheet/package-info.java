/** The step sheet on screen: how its pages are set up, laid out, painted and looked through. */
package thrumwright.editor.sheet;
