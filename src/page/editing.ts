import { javascript } from '@codemirror/lang-javascript';
import { markdown } from '@codemirror/lang-markdown';
import {
  CodeMirrorEditorFactory,
  CodeMirrorMimeTypeService,
  EditorExtensionRegistry,
  EditorLanguageRegistry,
  EditorThemeRegistry,
  ybinding,
} from '@jupyterlab/codemirror';
import { Notebook, NotebookModel, StaticNotebook } from '@jupyterlab/notebook';
import {
  htmlRendererFactory,
  RenderedHTML,
  RenderedSVG,
  standardRendererFactories,
  svgRendererFactory,
  type RenderMimeRegistry,
} from '@jupyterlab/rendermime';
import type { IRenderMime } from '@jupyterlab/rendermime-interfaces';
import { chartFactory } from './chart-mime-renderer.js';
import { markdownParser } from './markdown-renderer.js';
import { makeSanitizer, withoutNavigation } from './output-sanitizer.js';
import { typeset } from './math-typesetter.js';
import { backend } from './backend.js';
import { ticketFor } from './server-api.js';
import { ResultRegistry, typesetWorkings } from './result-renderer.js';

/** What shows outputs and text: the widgets' own renderers, our charts, our formulas. HTML is sanitised unless its cell is trusted. */
export function makeRendering(path: string): RenderMimeRegistry {
  const folder = path.includes('/') ? path.slice(0, path.lastIndexOf('/') + 1) : '';
  const registry = new ResultRegistry({
    // SVG is shown as a picture, in which nothing runs: it needs no trust.
    initialFactories: standardRendererFactories.map((factory) =>
      factory === svgRendererFactory
        ? { ...factory, safe: true, createRenderer: (options) => new Picture(options) }
        : factory === htmlRendererFactory
          ? { ...factory, createRenderer: (options) => new TypesetHtml(options) }
          : factory,
    ),
    sanitizer: makeSanitizer(),
    latexTypesetter: { typeset },
    markdownParser,
    resolver: {
      resolveUrl: (url: string) =>
        Promise.resolve(
          /^[a-z][a-z+.-]*:|^[/#]/i.test(url) ? url : new URL(url, `http://here/${folder}`).pathname.slice(1),
        ),
      getDownloadUrl: (url: string) =>
        url.endsWith('.ipynb')
          ? Promise.resolve(backend.notebookAddress(decodeURI(url)))
          : ticketFor(decodeURI(url)),
      isLocal: (url: string) => !/^[a-z][a-z+.-]*:|^\/\/|^#/i.test(url),
    },
    linkHandler: {
      handleLink: (node: HTMLElement, linked: string) => {
        if (linked.endsWith('.ipynb')) node.setAttribute('href', backend.notebookAddress(decodeURI(linked)));
      },
    },
  });
  registry.addFactory(chartFactory);
  return registry;
}

class TypesetHtml extends RenderedHTML {
  override async render(model: IRenderMime.IMimeModel): Promise<void> {
    const html = model.data[this.mimeType];
    await super.render(
      model.trusted && typeof html === 'string'
        ? {
            data: { ...model.data, [this.mimeType]: withoutNavigation(html) },
            metadata: model.metadata,
            trusted: true,
            setData: (options) => model.setData(options),
          }
        : model,
    );
    typesetWorkings(this.node);
  }
}

/** An SVG is put into an image element, where nothing in it runs or loads: trust makes no difference to it. */
class Picture extends RenderedSVG {
  override render(model: IRenderMime.IMimeModel): Promise<void> {
    return super.render({
      data: model.data,
      metadata: model.metadata,
      trusted: true,
      setData: (options) => model.setData(options),
    });
  }
}

const typescript = javascript({ typescript: true });

function makeEditors(): { factory: CodeMirrorEditorFactory; mimeTypes: CodeMirrorMimeTypeService } {
  const languages = new EditorLanguageRegistry();
  languages.addLanguage({
    name: 'typescript',
    alias: ['ts', 'javascript', 'js'],
    mime: ['text/typescript', 'text/x-typescript', 'application/typescript', 'text/javascript'],
    extensions: ['ts', 'js'],
    support: typescript,
  });
  languages.addLanguage({
    name: 'markdown',
    mime: ['text/x-ipythongfm', 'text/x-markdown', 'text/x-gfm'],
    extensions: ['md'],
    support: markdown({ codeLanguages: () => typescript.language }),
  });
  const themes = new EditorThemeRegistry();
  for (const theme of EditorThemeRegistry.getDefaultThemes()) themes.addTheme(theme);
  const extensions = new EditorExtensionRegistry();
  for (const extension of EditorExtensionRegistry.getDefaultExtensions({ themes }))
    extensions.addExtension(extension);
  extensions.addExtension({
    name: 'shared-model-binding',
    factory: (options) => {
      type Bound = Parameters<typeof ybinding>[0];
      const text = options.model.sharedModel as unknown as {
        ysource: Bound['ytext'];
        undoManager: NonNullable<Bound['undoManager']> | null;
      };
      return EditorExtensionRegistry.createImmutableExtension(
        ybinding({ ytext: text.ysource, ...(text.undoManager ? { undoManager: text.undoManager } : {}) }),
      );
    },
  });
  return {
    factory: new CodeMirrorEditorFactory({ extensions, languages }),
    mimeTypes: new CodeMirrorMimeTypeService(languages),
  };
}

/** The notebook widget, with editors for TypeScript and Markdown. */
export function makeNotebook(rendermime: RenderMimeRegistry): Notebook {
  const { factory, mimeTypes } = makeEditors();
  const notebook = new Notebook({
    rendermime,
    contentFactory: new Notebook.ContentFactory({ editorFactory: factory.newInlineEditor }),
    // Every notebook here is TypeScript, also one that does not say so.
    mimeTypeService: {
      getMimeTypeByLanguage: () => 'text/typescript',
      getMimeTypeByFilePath: (file: string) => mimeTypes.getMimeTypeByFilePath(file),
    },
    languagePreference: 'typescript',
    editorConfig: {
      ...StaticNotebook.defaultEditorConfig,
      code: {
        ...StaticNotebook.defaultEditorConfig.code,
        lineNumbers: false,
        autoClosingBrackets: true,
        lineWrap: true,
        tabFocusable: false,
      },
      markdown: { ...StaticNotebook.defaultEditorConfig.markdown, lineWrap: true, matchBrackets: false },
    },
    notebookConfig: {
      ...StaticNotebook.defaultNotebookConfig,
      scrollPastEnd: false,
      showInputPlaceholder: false,
      showHiddenCellsButton: true,
    },
  });
  notebook.model = new NotebookModel({ languagePreference: 'typescript' });
  return notebook;
}
