import CopyPlugin from 'copy-webpack-plugin';
import { EsbuildPlugin } from 'esbuild-loader';
import HtmlPlugin from 'html-webpack-plugin';
import CssPlugin from 'mini-css-extract-plugin';
import webpack, { type Configuration, type WebpackPluginInstance } from 'webpack';
import { developmentAddress } from './address.js';
import { dist, path } from './paths.js';
import { contentPolicy, type OfficeSource, officeScript } from './policy.js';

export type Part = 'functions' | 'pane' | 'workbook';
export type Setting = { address: string; office: OfficeSource };

const target = 'es2022';

/** Everything that the three parts have in common. */
export function common(name: Part, entry: string): Configuration {
  return {
    name,
    mode: 'production',
    context: path(),
    entry: { [name]: path(entry) },
    target: ['web', target],
    devtool: false,
    // Parts of the pane that load later stand beside those of the workbook in one folder.
    output: { path: dist, filename: '[name].js', chunkFilename: `${name}.[name].js`, publicPath: '' },
    resolve: { extensions: ['.ts', '.tsx', '.js'], extensionAlias: { '.js': ['.ts', '.tsx', '.js'] } },
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          loader: 'esbuild-loader',
          options: { target, jsx: 'automatic', jsxImportSource: 'preact' },
        },
        { test: /\.css$/, use: [CssPlugin.loader, 'css-loader'] },
      ],
    },
    optimization: { minimizer: [new EsbuildPlugin({ target, css: true })] },
    cache: {
      type: 'filesystem',
      name,
      cacheDirectory: path('.cache/webpack'),
      buildDependencies: { config: [import.meta.filename, path('package-lock.json')] },
    },
    performance: false,
    infrastructureLogging: { level: 'warn' },
  };
}

/** The icons serve both pages, and a part built alone needs them too. */
const icons = { from: '*.{png,svg}', context: path('taskpane/assets'), to: 'assets/[name][ext]' };

/** Puts the policy at the top of every page: as a meta tag it only holds for what comes after it. */
function policyFirst(policy: string): WebpackPluginInstance {
  const meta = `<meta http-equiv="Content-Security-Policy" content="${policy}">`;
  return {
    apply: (compiler) =>
      compiler.hooks.compilation.tap('policy', (compilation) => {
        HtmlPlugin.getHooks(compilation).beforeEmit.tap('policy', (data) => {
          if (!data.html.includes('<head>')) throw new Error(`${data.outputName} has no plain <head> for the policy.`);
          return { ...data, html: data.html.replace('<head>', `<head>${meta}`) };
        });
      }),
  };
}

/** One page from its template; webpack adds the part's script and styles. */
function page(template: string, filename: string, office: OfficeSource): HtmlPlugin {
  return new HtmlPlugin({ template: path(template), filename, scriptLoading: 'defer', office: officeScript[office] });
}

/** The worksheet functions: one classic script for runtimes that may lack a DOM, so it never loads a second file. */
export function functionsPart(): Configuration {
  const settings = common('functions', 'functions/register.ts');
  const output = {
    ...settings.output,
    globalObject: 'globalThis',
    chunkFormat: false as const,
    chunkLoading: false as const,
  };
  return { ...settings, output, target: [target] };
}

/** The side pane in Excel, and what Excel's side alone needs: manifest, icons, office.js. */
export function panePart({ address, office }: Setting): Configuration {
  const manifest = {
    from: path('manifest.xml'),
    to: 'manifest.xml',
    transform: (text: Buffer) => text.toString().replaceAll(developmentAddress, address),
  };
  const library = path('node_modules/@microsoft/office-js/dist');
  // office.js asks for these by paths relative to itself.
  const officeFiles = [
    'office.js',
    'excel-{web-16.00,win32-16.01,mac-16.00}.js',
    'o15apptofilemappingtable.js',
    'telemetry/oteljs_agave.js',
    '??-*/office_strings.js',
  ].map((from) => ({ from, context: library, to: 'assets/office/[path][name][ext]', info: { minimized: true } }));
  return {
    ...common('pane', 'taskpane/pane/excel.tsx'),
    plugins: [
      new CssPlugin(),
      page('taskpane/taskpane.html', 'taskpane.html', office),
      policyFirst(contentPolicy('taskpane', office)),
      new CopyPlugin({ patterns: [manifest, icons, ...(office === 'local' ? officeFiles : [])] }),
    ],
  };
}

/** The engine's files of hyphenation patterns are named by language and a hash: one empty file serves for all. */
const withoutHyphenation = new webpack.NormalModuleReplacementPlugin(/^\.\/[a-z0-9-]+-[\w-]{8}\.js$/, (resource) => {
  if (/engine-render[\\/]lib[\\/]es$/.test(resource.context)) {
    resource.request = path('taskpane/workbook/engine/mends/noHyphenation.ts');
  }
});

/**
 * The page and the thread that calculates hold the same engine, so they load one file of it: the browser has it at hand
 * when the second of them asks.
 */
const sharedEngine = {
  usedExports: 'global' as const,
  splitChunks: {
    cacheGroups: {
      engine: {
        test: /[\\/]node_modules[\\/](?:@univerjs[\\/](?:core|engine-formula|rpc|sheets)|rxjs|@wendellhu)[\\/]/,
        name: 'engine',
        chunks: 'async' as const,
        enforce: true,
        priority: 10,
      },
    },
  },
};

/** The embedded workbook, under its own name and as the page that a browser gets when it names none. */
export function workbookPart({ office }: Setting): Configuration {
  const template = 'taskpane/workbook/workbook.html';
  const settings = common('workbook', 'taskpane/workbook/main.tsx');
  return {
    ...settings,
    optimization: { ...settings.optimization, ...sharedEngine },
    plugins: [
      new CssPlugin(),
      page(template, 'workbook.html', office),
      page(template, 'index.html', office),
      policyFirst(contentPolicy('workbook', office)),
      withoutHyphenation,
      new CopyPlugin({ patterns: [icons] }),
    ],
  };
}
